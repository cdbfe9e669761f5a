using System.Text.Json;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>Reads and writes <c>hours.json</c>: when the shop is worked in. What is left out has its default; times are texts such as <c>"18:30"</c>.</summary>
public static class HoursFile
{
    /// <summary>The file's name in a workshop folder.</summary>
    public const string Name = "hours.json";

    /// <summary>Reads the file's bytes, UTF-8.</summary>
    /// <param name="bytes">The whole file.</param>
    public static FileOutcome<WorkHours> Parse(ReadOnlySpan<byte> bytes)
    {
        var problems = new ProblemList(Name);
        return Parse(FileText.Decode(bytes, problems), problems);
    }

    /// <summary>Reads the file's text.</summary>
    /// <param name="text">The whole file.</param>
    public static FileOutcome<WorkHours> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var problems = new ProblemList(Name);
        return Parse(FileText.Check(text, problems), problems);
    }

    /// <summary>The file's text, which is read back to the same hours, exactly.</summary>
    /// <param name="hours">The hours.</param>
    public static string Write(WorkHours hours) => JsonSerializer.Serialize(hours, PlanJson.Indented).ReplaceLineEndings("\n") + "\n";

    private static FileOutcome<WorkHours> Parse(string? text, ProblemList problems)
    {
        var hours = text is null ? null : JsonText.Read<WorkHours>(text, problems);
        if (hours is not null)
        {
            var places = new JsonPlaces(text!);
            foreach (var problem in HoursRules.Check(hours))
            {
                var (line, column) = places.Of("$." + problem.Path);
                problems.Add(line, column, $"{problem.Path}: {problem.Found}", problem.Expected);
            }
        }

        return problems.Outcome(() => hours!);
    }
}
