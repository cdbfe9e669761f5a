using System.Text;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files.Tests;

public sealed class WorkshopFolderTests : IDisposable
{
    private const string Pile = "label,species,length,width,thickness\nW1,walnut,365,54,22\n";
    private const string Gifts = "gift,design\nseed,rod-stand\n";

    private readonly string folder = Directory.CreateTempSubdirectory("scrapwright-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private void Put(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(folder, name))!);
        File.WriteAllText(Path.Combine(folder, name), text, Encoding.UTF8);
    }

    private FileOutcome<PlanRequest>.Refused Refused() => Assert.IsType<FileOutcome<PlanRequest>.Refused>(WorkshopFolder.Read(folder));

    private FileOutcome<PlanRequest>.Read Read() => Assert.IsType<FileOutcome<PlanRequest>.Read>(WorkshopFolder.Read(folder));

    [Fact]
    public void Read_of_an_empty_folder_says_which_files_are_expected()
    {
        var problem = Assert.Single(Refused().Problems);

        Assert.Equal(FileMessages.AFolder, problem.Expected);
    }

    [Fact]
    public void Read_of_no_folder_says_so()
    {
        var refused = Assert.IsType<FileOutcome<PlanRequest>.Refused>(WorkshopFolder.Read(Path.Combine(folder, "nowhere")));

        Assert.Equal(("no such folder", FileMessages.AFolder), (refused.Problems[0].Found, refused.Problems[0].Expected));
    }

    [Fact]
    public void Read_names_each_missing_file()
    {
        Put("shop.json", "{}");

        Assert.Equal(["pile.csv", "gifts.csv"], Refused().Problems.Select(problem => problem.File));
    }

    [Fact]
    public void Read_takes_bare_numbers_in_the_unit_of_the_shop()
    {
        Put("pile.csv", Pile);
        Put("gifts.csv", Gifts);
        Put("shop.json", "{ \"unit\": \"millimetre\" }");
        Put("designs/tall.json", "{ \"key\": \"tall\", \"title\": \"Tall\", \"family\": \"rod-stand\" }");
        Put("readme.txt", "other files are left alone");

        var request = Read().Content;

        Assert.Equal(Length.FromMillimetres(365), request.Pile[0].Length);
        Assert.Equal("tall", Assert.Single(request.Designs).Key);
        Assert.Equal(Path.GetFileName(folder), request.Workshop);
    }

    [Fact]
    public void Read_gathers_the_problems_of_all_files_and_the_doubts()
    {
        Put("pile.csv", "label,species,length,width,thickness\nW1,frob,9,2,1\n");
        Put("gifts.csv", "gift,design\n,rod-stand\n");
        Put("shop.json", "{ \"denominator\": 3 }");
        Put("designs/a.json", "{");
        Put("designs/b.json", "{ \"key\": \"k\", \"title\": \"T\", \"family\": \"rod-stand\" }");
        Put("designs/c.json", "{ \"key\": \"k\", \"title\": \"T\", \"family\": \"rod-stand\" }");

        Assert.Equal(["shop.json", "pile.csv", "gifts.csv", "designs/a.json", "designs/c.json"], Refused().Problems.Select(problem => problem.File));

        Put("pile.csv", "label,species,length,width,thickness\nW1,ash,40 m,2,1\n");
        Put("gifts.csv", Gifts);
        Put("shop.json", "{}");
        Directory.Delete(Path.Combine(folder, "designs"), recursive: true);
        Assert.Equal(("pile.csv", 2), (Read().Doubts.Single().File, Read().Doubts.Single().Line));
    }

    [Fact]
    public void Read_of_a_huge_file_refuses_without_reading_it_all()
    {
        Put("pile.csv", new string('#', 10_000_000));
        Put("gifts.csv", Gifts);

        Assert.Equal(FileMessages.SmallerFile, Assert.Single(Refused().Problems).Expected);
    }

    [Fact]
    public void Write_is_read_back_to_the_same_request()
    {
        var design = new Design { Key = "tall", Title = "Tall", Family = "rod-stand" };
        var request = ExampleWorkshop.Request with { Workshop = Path.GetFileName(folder), Designs = [design], Shop = new Shop { Unit = LengthUnit.Millimetre } };

        WorkshopFolder.Write(folder, request);
        WorkshopFolder.Write(folder, request);

        Assert.Equal(PlanJson.Fingerprint(request), PlanJson.Fingerprint(Read().Content));
        Assert.Equal(["designs/tall.json", "gifts.csv", "pile.csv", "shop.json"],
            Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/')).Order(StringComparer.Ordinal));
    }
}
