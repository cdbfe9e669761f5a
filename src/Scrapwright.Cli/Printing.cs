using System.Text;
using Scrapwright.Cli.Output;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Sheets;
using Scrapwright.Core.Shops;
using Scrapwright.Paper;

namespace Scrapwright.Cli;

/// <summary>Turns a plan into files.</summary>
internal static class Printing
{
    /// <summary>The paper by its name, or the shop's own: Letter where it measures in inches, A4 where in millimetres.</summary>
    internal static PaperSize Paper(string? name, Shop shop) => name?.ToUpperInvariant() switch
    {
        "LETTER" => PaperSize.Letter,
        "A4" => PaperSize.A4,
        _ => shop.Unit == LengthUnit.Inch ? PaperSize.Letter : PaperSize.A4,
    };

    internal static void AddPlan(NewFiles files, string path, Plan plan) =>
        files.Add(path, stream => stream.Write(Encoding.UTF8.GetBytes(PlanJson.Write(plan) + "\n")));

    internal static void AddSheets(NewFiles files, string path, Plan plan, PaperSize paper) => Add(files, path, BenchSheets.For(plan, paper));

    /// <summary>Labels for the strips; false and no file when the plan has no glue-up.</summary>
    internal static bool AddLabels(NewFiles files, string path, Plan plan, PaperSize paper)
    {
        var sheets = StripLabels.For(plan, paper);
        if (sheets.IsEmpty) return false;
        Add(files, path, sheets);
        return true;
    }

    /// <summary>The weeks of a calendar; false and no file when nothing is left to do.</summary>
    internal static bool AddWeeks(NewFiles files, string path, WorkCalendar calendar, Plan plan, PaperSize paper)
    {
        var sheets = WeekSheets.For(calendar, plan, paper);
        if (sheets.IsEmpty) return false;
        Add(files, path, sheets);
        return true;
    }

    /// <summary>One PDF; or, when the name ends in .svg, one picture a sheet: name-01.svg, name-02.svg …</summary>
    private static void Add(NewFiles files, string path, IReadOnlyList<Sheet> sheets)
    {
        if (!path.EndsWith(".svg", StringComparison.OrdinalIgnoreCase))
        {
            files.Add(path, stream => PdfWriter.Write(sheets, stream));
            return;
        }

        for (var i = 0; i < sheets.Count; i++)
        {
            var sheet = sheets[i];
            files.Add($"{path[..^4]}-{i + 1:00}.svg", stream => stream.Write(Encoding.UTF8.GetBytes(SvgWriter.Write(sheet))));
        }
    }
}
