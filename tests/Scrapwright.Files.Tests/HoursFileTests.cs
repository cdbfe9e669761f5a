using System.Text;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files.Tests;

public sealed class HoursFileTests
{
    [Fact]
    public void Parse_takes_defaults_for_what_is_left_out()
    {
        var hours = Read("""
            {
              // evenings only
              "timeZone": "Europe/Dublin",
              "week": [ { "day": "monday", "hours": [ { "from": "19:00", "until": "24:00" } ] } ],
              "quietFrom": null,
              "exceptions": [ { "first": "2027-05-22", "last": "2027-05-30", "hours": [], "note": "away" } ],
            }
            """);

        Assert.Equal(("Europe/Dublin", null, new TimeOnly(8, 0), 1), (hours.TimeZone, hours.QuietFrom, hours.QuietUntil, hours.Makers));
        Assert.Equal(new HourRange(new(19, 0), TimeOnly.MinValue), Assert.Single(Assert.Single(hours.Week).Hours));
        Assert.Equal((new DateOnly(2027, 5, 30), "away"), (hours.Exceptions[0].Last, hours.Exceptions[0].Note));
    }

    [Fact]
    public void Write_is_read_back_to_the_same_hours_in_times_as_people_write_them()
    {
        var hours = ExampleWorkshop.Hours with { TimeZone = "Australia/Lord_Howe", QuietUntil = null, Makers = 2 };

        var text = HoursFile.Write(hours);

        Assert.Equal(text, HoursFile.Write(Read(text)));
        Assert.Contains("\"from\": \"18:30\"", text, StringComparison.Ordinal);
        Assert.Contains("\"day\": \"tuesday\"", text, StringComparison.Ordinal);
        Assert.Contains("\"quietUntil\": null", text, StringComparison.Ordinal);
        Assert.Equal(hours.Exceptions[1].First, Read(text).Exceptions[1].First);
    }

    [Theory]
    [InlineData("\"timeZone\": \"Europe/Dubln\"", "timeZone: Europe/Dubln", "maybe Europe/Dublin")]
    [InlineData("\"makers\": 0", "makers: 0", "1 to 9")]
    [InlineData("\"quietFrom\": \"07:00\"", "quietFrom: 07:00", "later than quietUntil, which is 08:00")]
    [InlineData("\"quietFrom\": \"half past\"", "$.quietFrom", "such as \"18:30\"")]
    [InlineData("\"quietFrom\": \"18:30:10\"", "$.quietFrom", "whole minutes")]
    [InlineData("\"week\": [ null ]", "week[0]: null", FileMessages.AValue)]
    [InlineData("\"week\": [ { \"day\": \"someday\", \"hours\": [] } ]", "$.week[0].day", "")]
    [InlineData("\"week\": [ { \"day\": \"monday\", \"hours\": [] }, { \"day\": \"monday\", \"hours\": [] } ]", "week[1].day: Monday", "only once")]
    [InlineData("\"week\": [ { \"day\": \"monday\", \"hours\": [ { \"from\": \"20:00\", \"until\": \"19:00\" } ] } ]", "week[0].hours[0].until: 19:00", "later than 20:00, or 24:00")]
    [InlineData("\"week\": [ { \"day\": \"monday\", \"hours\": [ { \"from\": \"9:00\", \"until\": \"12:00\" }, { \"from\": \"11:30\", \"until\": \"13:00\" } ] } ]", "week[0].hours[1].from: 11:30", "not before")]
    [InlineData("\"exceptions\": [ { \"first\": \"2027-05-30\", \"last\": \"2027-05-22\", \"hours\": [] } ]", "exceptions[0].last: 2027-05-22", "not before the first")]
    [InlineData("\"exceptions\": [ { \"first\": \"2027-02-30\", \"last\": \"2027-05-22\", \"hours\": [] } ]", "$.exceptions[0].first", "")]
    [InlineData("\"exceptions\": [ { \"first\": \"2027-05-20\", \"last\": \"2027-05-22\", \"hours\": [ null ] } ]", "exceptions[0].hours[0]: null", FileMessages.AValue)]
    [InlineData("\"exceptions\": [ { \"first\": \"0001-01-01\", \"last\": \"9999-12-31\", \"hours\": [] } ]", "exceptions[0].first: 0001-01-01", FileMessages.ADate)]
    public void Parse_refuses_what_does_not_fit_with_its_place(string member, string found, string expected)
    {
        var problem = Refused("{\n  " + member + "\n}").Problems[0];

        Assert.Equal((HoursFile.Name, 2), (problem.File, problem.Line));
        Assert.Contains(found, problem.Found, StringComparison.Ordinal);
        Assert.Contains(expected, problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void The_usual_hours_and_those_of_the_example_break_no_rule()
    {
        Assert.Empty(HoursRules.Check(new WorkHours()));
        Assert.Empty(HoursRules.Check(ExampleWorkshop.Hours));
    }

    [Fact]
    public void A_workshop_has_hours_beside_what_its_plan_is_made_from()
    {
        var files = WorkshopFiles.Write(ExampleWorkshop.Request, ExampleWorkshop.Hours).ToDictionary(f => f.Key, f => Encoding.UTF8.GetBytes(f.Value));

        var request = Assert.IsType<FileOutcome<PlanRequest>.Read>(WorkshopFiles.Read(ExampleWorkshop.Name, files)).Content;
        var hours = Assert.IsType<FileOutcome<WorkHours>.Read>(WorkshopFiles.ReadHours(files)).Content;

        Assert.Equal(HoursFile.Write(ExampleWorkshop.Hours), HoursFile.Write(hours));
        // They change no plan.
        Assert.Equal(PlanJson.Fingerprint(ExampleWorkshop.Request), PlanJson.Fingerprint(request));
        Assert.DoesNotContain(HoursFile.Name, WorkshopFiles.Write(ExampleWorkshop.Request).Keys);
        files[HoursFile.Name] = "{ \"makers\": 0 }"u8.ToArray();
        Assert.Equal(HoursFile.Name, Assert.IsType<FileOutcome<PlanRequest>.Refused>(WorkshopFiles.Read(ExampleWorkshop.Name, files)).Problems[0].File);
        files.Remove(HoursFile.Name);
        Assert.Equal(HoursFile.Write(new()), HoursFile.Write(Assert.IsType<FileOutcome<WorkHours>.Read>(WorkshopFiles.ReadHours(files)).Content));
    }

    [Fact]
    public void A_folder_keeps_its_hours_when_only_the_rest_is_written()
    {
        var folder = Directory.CreateTempSubdirectory("scrapwright-").FullName;
        try
        {
            var hours = new WorkHours { Makers = 3 };
            WorkshopFolder.Write(folder, ExampleWorkshop.Request, hours);
            WorkshopFolder.Write(folder, ExampleWorkshop.Request);

            Assert.Equal(3, Assert.IsType<FileOutcome<WorkHours>.Read>(WorkshopFolder.ReadHours(folder)).Content.Makers);
            Assert.IsType<FileOutcome<PlanRequest>.Read>(WorkshopFolder.Read(folder));
            Assert.IsType<FileOutcome<WorkHours>.Refused>(WorkshopFolder.ReadHours(Path.Combine(folder, "nowhere")));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static FileOutcome<WorkHours>.Refused Refused(string text) => Assert.IsType<FileOutcome<WorkHours>.Refused>(HoursFile.Parse(text));

    private static WorkHours Read(string text) => Assert.IsType<FileOutcome<WorkHours>.Read>(HoursFile.Parse(text)).Content;
}
