using System.Reflection;
using System.Xml.Linq;
using Scrapwright.Client.Shell;
using Scrapwright.Core.Measures;
using Scrapwright.Files;
using Scrapwright.ICalendar;
using Scrapwright.Planning;
using Scrapwright.Storage;

namespace Scrapwright.Architecture.Tests;

/// <summary>The projects under src: what they may know, what they do know.</summary>
internal static class Projects
{
    /// <summary>What each project may refer to.</summary>
    public static IReadOnlyDictionary<string, string[]> MayReferTo { get; } = new Dictionary<string, string[]>
    {
        ["Core"] = [],
        ["Files"] = ["Core"],
        ["Planning"] = ["Core"],
        ["Paper"] = ["Core"],
        ["ICalendar"] = ["Core"],
        ["Storage"] = ["Core"],
        ["Client"] = ["Core", "Files"],
        ["Web"] = ["Core", "Files", "Planning", "Paper", "ICalendar", "Storage", "Client"],
        ["Cli"] = ["Core", "Files", "Planning", "Paper", "ICalendar", "Storage", "Web"],
    };

    /// <summary>Packages that one project walls off: the first word or words of their assemblies' names.</summary>
    public static IReadOnlyDictionary<string, string> Walls { get; } = new Dictionary<string, string>
    {
        ["Google.OrTools"] = "Planning",
        ["PdfSharp"] = "Paper",
        ["Microsoft.EntityFrameworkCore"] = "Storage",
        ["Ical.Net"] = "ICalendar",
        ["CsvHelper"] = "Files",
        ["Spectre.Console"] = "Cli",
    };

    public static IReadOnlyDictionary<string, Assembly> Assemblies { get; } = new Dictionary<string, Assembly>
    {
        ["Core"] = typeof(Length).Assembly,
        ["Files"] = typeof(ExampleWorkshop).Assembly,
        ["Planning"] = typeof(Planner).Assembly,
        ["Paper"] = Assembly.Load("Scrapwright.Paper"),
        ["ICalendar"] = typeof(CalendarFile).Assembly,
        ["Storage"] = typeof(WorkshopStore).Assembly,
        ["Client"] = typeof(Undoing).Assembly,
        ["Web"] = Assembly.Load("Scrapwright.Web"),
        ["Cli"] = Assembly.Load("scrapwright"),
    };

    /// <summary>What a project file includes of one kind, such as PackageReference.</summary>
    public static string[] Includes(string project, string element) =>
    [
        .. XDocument.Parse(Repository.Text($"src/Scrapwright.{project}/Scrapwright.{project}.csproj"))
            .Descendants(element)
            .Select(reference => reference.Attribute("Include")!.Value),
    ];
}
