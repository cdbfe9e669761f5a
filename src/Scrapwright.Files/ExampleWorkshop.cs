using System.Text;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>A workshop to try everything with: a garden shed that gets ready for a midsummer open day.</summary>
public static class ExampleWorkshop
{
    /// <summary>Its name.</summary>
    public const string Name = "Garden shed";

    private static readonly DateOnly Seen = new(2027, 4, 1);
    private static readonly Lazy<PlanRequest> Loaded = new(Load);
    private static readonly Lazy<PlanRequest> Dated = new(() => Listed with { Gifts = Years.Dated(Listed.Gifts, Seen) });
    private static readonly Lazy<GiftYears> LoadedYears = new(() => new(Content(OccasionsFile.Parse(Embedded(OccasionsFile.Name))), Content(GivenFile.Parse(Embedded(GivenFile.Name)))));

    /// <summary>The pile, the gifts as they are listed, and the shop.</summary>
    public static PlanRequest Listed => Loaded.Value;

    /// <summary>The same as it is planned from 1 April 2027 on: every gift with its date.</summary>
    public static PlanRequest Request => Dated.Value;

    /// <summary>Its occasions, and what was given in two years before. Invented.</summary>
    public static GiftYears Years => LoadedYears.Value;

    /// <summary>When it is worked in: three evenings and Saturdays by the clock of the machine it runs on, away for a week in May, an evening more before the open day. Invented.</summary>
    public static WorkHours Hours { get; } = new()
    {
        Exceptions =
        [
            new(new(2027, 5, 22), new(2027, 5, 30), [], "away"),
            new(new(2027, 6, 18), new(2027, 6, 18), [new(new(17, 0), new(21, 0))], "the evening before the open day"),
        ],
    };

    private static PlanRequest Load()
    {
        var shop = new Shop { Climate = "shed-temperate" };
        return new()
        {
            Workshop = Name,
            Shop = shop,
            Pile = Content(PileFile.Parse(Embedded(PileFile.Name), LengthUnit.Inch)),
            Gifts = Content(GiftsFile.Parse(Embedded(GiftsFile.Name), shop, Years.Occasions)),
        };
    }

    private static T Content<T>(FileOutcome<T> outcome) => outcome switch
    {
        FileOutcome<T>.Read read => read.Content,
        FileOutcome<T>.Refused refused => throw new InvalidOperationException($"The example is wrong: {refused.Problems[0]}"),
        _ => throw new InvalidOperationException("An outcome of another kind."),
    };

    private static string Embedded(string file)
    {
        var name = $"Scrapwright.Files.Example.{file}";
        using var stream = typeof(ExampleWorkshop).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The resource {name} is missing. Maybe the project file no longer embeds it.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
