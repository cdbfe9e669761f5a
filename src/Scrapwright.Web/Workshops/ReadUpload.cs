using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Files;
using Scrapwright.Storage;

namespace Scrapwright.Web.Workshops;

/// <summary>Uploaded files, read: what they put in place of the workshop's contents, or every problem.</summary>
internal sealed class ReadUpload
{
    private readonly ImmutableArray<FieldProblem>.Builder problems = ImmutableArray.CreateBuilder<FieldProblem>();
    private readonly ImmutableArray<string>.Builder doubts = ImmutableArray.CreateBuilder<string>();

    private ReadUpload()
    {
    }

    internal ImmutableArray<FieldProblem> Problems => problems.ToImmutable();

    internal WorkshopContents Contents { get; private set; } = new();

    internal ImportResult Result => new(Contents.Pile?.Length, Contents.Gifts?.Length, Contents.Shop is not null, Contents.Designs?.Length) { Hours = Contents.Hours is not null, Occasions = Contents.Occasions?.Length, Given = Contents.Given?.Length, Times = Contents.Times?.Length, Prices = Contents.Prices?.Length, Jigs = Contents.Jigs?.Length, Doubts = doubts.ToImmutable() };

    /// <summary>Reads what there is.</summary>
    /// <param name="upload">The files.</param>
    /// <param name="workshop">The workshop as it is, for what is not among the files.</param>
    /// <param name="years">Its occasions and what was given.</param>
    internal static ReadUpload Of(Upload upload, PlanRequest workshop, GiftYears years)
    {
        var reading = new ReadUpload();
        var shop = workshop.Shop;
        var files = upload.Files;
        if (files.TryGetValue(ShopFile.Name, out var bytes) && reading.Take(ShopFile.Parse(bytes)) is { } readShop)
        {
            reading.Contents = reading.Contents with { Shop = readShop };
            shop = readShop;
        }

        if (files.TryGetValue(HoursFile.Name, out var hours)) reading.Contents = reading.Contents with { Hours = reading.Take(HoursFile.Parse(hours)) };
        if (files.TryGetValue(OccasionsFile.Name, out var occasions)) reading.TakeOccasions(OccasionsFile.Parse(occasions));
        if (files.TryGetValue(GivenFile.Name, out var given)) reading.Contents = reading.Contents with { Given = reading.TakeMany(GivenFile.Parse(given)) };
        if (files.TryGetValue(TimesFile.Name, out var times)) reading.Contents = reading.Contents with { Times = reading.TakeMany(TimesFile.Parse(times)) };
        if (files.TryGetValue(PricesFile.Name, out var prices)) reading.Contents = reading.Contents with { Prices = reading.TakeMany(PricesFile.Parse(prices)) };
        if (files.TryGetValue(JigsFile.Name, out var jigs)) reading.Contents = reading.Contents with { Jigs = reading.TakeMany(JigsFile.Parse(jigs)) };
        if (files.TryGetValue(PileFile.Name, out var pile))
            reading.Contents = reading.Contents with { Pile = [.. reading.TakeMany(PileFile.Parse(pile, shop.Unit)).Select(o => new NewOffcut(o, shop.Unit))] };
        if (files.TryGetValue(GiftsFile.Name, out var gifts))
            reading.Contents = reading.Contents with { Gifts = reading.TakeMany(GiftsFile.Parse(gifts, shop, reading.IsUnsure ? null : reading.Contents.Occasions ?? years.Occasions)) };
        if (files.Any(f => IsDesign(f.Key)))
            reading.Contents = reading.Contents with { Designs = reading.Designs(files.Where(f => IsDesign(f.Key))) };
        if (reading.problems.Count == 0 && files.TryGetValue(ChoicesFile.Name, out var choices))
        {
            var contents = reading.Contents;
            var request = workshop with
            {
                Shop = shop,
                Pile = contents.Pile is { } newPile ? [.. newPile.Select(o => o.Offcut)] : workshop.Pile,
                Gifts = contents.Gifts ?? workshop.Gifts,
                Designs = contents.Designs ?? workshop.Designs,
            };
            reading.Contents = contents with { Choices = reading.Take(ChoicesFile.Parse(choices, request)) };
        }

        return reading;
    }

    /// <summary>True when occasions could not be read: then any name of one will do, and one fault is told once.</summary>
    private bool IsUnsure { get; set; }

    private void TakeOccasions(FileOutcome<ImmutableArray<Occasion>> outcome)
    {
        IsUnsure = outcome is not FileOutcome<ImmutableArray<Occasion>>.Read;
        Contents = Contents with { Occasions = TakeMany(outcome) };
    }

    private static bool IsDesign(string name) => name.StartsWith(DesignFile.Folder + "/", StringComparison.Ordinal);

    private ImmutableArray<Design> Designs(IEnumerable<KeyValuePair<string, byte[]>> files)
    {
        var designs = ImmutableArray.CreateBuilder<Design>();
        foreach (var (name, bytes) in files)
        {
            if (Take(DesignFile.Parse(name, bytes)) is not { } design) continue;
            if (designs.Any(d => string.Equals(d.Key, design.Key, StringComparison.OrdinalIgnoreCase))) problems.Add(new(name, design.Key, "a key that no other design has"));
            designs.Add(design);
        }

        return designs.ToImmutable();
    }

    private T? Take<T>(FileOutcome<T> outcome)
        where T : class => Read(outcome)?.Content;

    private ImmutableArray<T> TakeMany<T>(FileOutcome<ImmutableArray<T>> outcome) => Read(outcome)?.Content ?? [];

    private FileOutcome<T>.Read? Read<T>(FileOutcome<T> outcome)
    {
        switch (outcome)
        {
            case FileOutcome<T>.Read read:
                doubts.AddRange(read.Doubts.Select(d => d.ToString()));
                return read;
            case FileOutcome<T>.Refused refused:
                problems.AddRange(refused.Problems.Select(p => new FieldProblem(PlaceOf(p), p.Found, p.Expected)));
                return null;
            default:
                throw new InvalidOperationException($"Unknown outcome {outcome}.");
        }
    }

    private static string PlaceOf(FileProblem problem) => problem switch
    {
        { Line: 0 } => problem.File,
        { Column: 0 } => $"{problem.File} line {problem.Line}",
        _ => $"{problem.File} line {problem.Line}, column {problem.Column}",
    };
}
