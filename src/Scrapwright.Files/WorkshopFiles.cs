using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>The files of a workshop, by name with <c>/</c> before the name of a design; in memory, so that a browser has them too.</summary>
public static class WorkshopFiles
{
    /// <summary>Reads a workshop: all of it, or every problem of every file.</summary>
    /// <param name="workshop">Name of the workshop.</param>
    /// <param name="files">The files there are; others than pile.csv, gifts.csv, occasions.csv, given.csv, shop.json, hours.json, times.csv, prices.csv, jigs.csv, choices.json and designs/*.json are left alone. Hours, occasions, what was given and notes are read to see whether they can be; <see cref="ReadHours"/>, <see cref="ReadYears"/> and <see cref="ReadNotes"/> give them.</param>
    public static FileOutcome<PlanRequest> Read(string workshop, IReadOnlyDictionary<string, byte[]> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var gathered = new Gathered();
        if (!files.ContainsKey(PileFile.Name) && !files.ContainsKey(GiftsFile.Name) && !files.ContainsKey(ShopFile.Name))
        {
            gathered.Problems.Add(new(workshop, 0, 0, "no file of a workshop", FileMessages.AFolder));
            return gathered.Outcome(new PlanRequest());
        }

        var shop = files.TryGetValue(ShopFile.Name, out var shopBytes) ? gathered.Take(ShopFile.Parse(shopBytes)) ?? new Shop() : new Shop();
        var pile = files.TryGetValue(PileFile.Name, out var pileBytes) ? gathered.TakeMany(PileFile.Parse(pileBytes, shop.Unit)) : gathered.Missing<Offcut>(PileFile.Name);
        var gifts = files.TryGetValue(GiftsFile.Name, out var giftBytes) ? gathered.TakeMany(GiftsFile.Parse(giftBytes, shop, Occasions(files, gathered))) : gathered.Missing<Gift>(GiftsFile.Name);
        var request = new PlanRequest { Workshop = workshop, Shop = shop, Pile = pile, Gifts = gifts, Designs = ReadDesigns(files, gathered) };

        if (files.TryGetValue(HoursFile.Name, out var hourBytes)) gathered.Take(HoursFile.Parse(hourBytes));
        if (files.TryGetValue(GivenFile.Name, out var givenBytes)) gathered.TakeMany(GivenFile.Parse(givenBytes));
        Notes(files, gathered);

        // Choices name offcuts and gifts: while those cannot be read, there is nothing to check them against.
        if (gathered.Problems.Count == 0 && files.TryGetValue(ChoicesFile.Name, out var choiceBytes) && gathered.Take(ChoicesFile.Parse(choiceBytes, request)) is { } choices)
        {
            request = request with { Choices = choices };
        }

        return gathered.Outcome(request);
    }

    /// <summary>Reads when the shop is worked in, which changes no plan.</summary>
    /// <param name="files">The files there are.</param>
    /// <returns>The hours of <c>hours.json</c>; the usual ones when there is no such file.</returns>
    public static FileOutcome<WorkHours> ReadHours(IReadOnlyDictionary<string, byte[]> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        return files.TryGetValue(HoursFile.Name, out var bytes) ? HoursFile.Parse(bytes) : new FileOutcome<WorkHours>.Read(new(), []);
    }

    /// <summary>Reads what changes no plan: <c>times.csv</c>, <c>prices.csv</c> and <c>jigs.csv</c>; nothing of what is not there.</summary>
    /// <param name="files">The files there are.</param>
    public static FileOutcome<WorkshopNotes> ReadNotes(IReadOnlyDictionary<string, byte[]> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var gathered = new Gathered();
        return gathered.Outcome(Notes(files, gathered));
    }

    /// <summary>Reads the occasions and what was given.</summary>
    /// <param name="files">The files there are.</param>
    /// <returns>Both; none where there is no such file.</returns>
    public static FileOutcome<GiftYears> ReadYears(IReadOnlyDictionary<string, byte[]> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var gathered = new Gathered();
        ImmutableArray<Occasion> occasions = files.TryGetValue(OccasionsFile.Name, out var bytes) ? gathered.TakeMany(OccasionsFile.Parse(bytes)) : [];
        ImmutableArray<GivenGift> given = files.TryGetValue(GivenFile.Name, out var givenBytes) ? gathered.TakeMany(GivenFile.Parse(givenBytes)) : [];
        return gathered.Outcome(new GiftYears(occasions, given));
    }

    /// <summary>The text of every file of a workshop, by name.</summary>
    /// <param name="request">What to write.</param>
    /// <param name="hours">When the shop is worked in; null for no such file.</param>
    /// <param name="years">Its occasions and what was given; null, or one of them empty, for no such file.</param>
    /// <param name="notes">What changes no plan; null or empty lists for no such files.</param>
    public static ImmutableSortedDictionary<string, string> Write(PlanRequest request, WorkHours? hours = null, GiftYears? years = null, WorkshopNotes? notes = null)
    {
        ArgumentNullException.ThrowIfNull(request);
        var files = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        files[PileFile.Name] = PileFile.Write(request.Pile, request.Shop.Unit);
        files[GiftsFile.Name] = GiftsFile.Write(request.Gifts);
        files[ShopFile.Name] = ShopFile.Write(request.Shop);
        if (hours is not null) files[HoursFile.Name] = HoursFile.Write(hours);
        if (years is { Occasions.IsEmpty: false }) files[OccasionsFile.Name] = OccasionsFile.Write(years.Occasions);
        if (years is { Given.IsEmpty: false }) files[GivenFile.Name] = GivenFile.Write(years.Given);
        if (notes is { Times.IsEmpty: false }) files[TimesFile.Name] = TimesFile.Write(notes.Times);
        if (notes is { Prices.IsEmpty: false }) files[PricesFile.Name] = PricesFile.Write(notes.Prices);
        if (notes is { Jigs.IsEmpty: false }) files[JigsFile.Name] = JigsFile.Write(notes.Jigs);
        var choices = ChoiceFaults.Sound(request);
        if (!choices.AreNone) files[ChoicesFile.Name] = ChoicesFile.Write(choices);
        foreach (var design in request.Designs) files[DesignFile.NameOf(design)] = DesignFile.Write(design);
        return files.ToImmutable();
    }

    private static WorkshopNotes Notes(IReadOnlyDictionary<string, byte[]> files, Gathered gathered) => new()
    {
        Times = files.TryGetValue(TimesFile.Name, out var times) ? gathered.TakeMany(TimesFile.Parse(times)) : [],
        Prices = files.TryGetValue(PricesFile.Name, out var prices) ? gathered.TakeMany(PricesFile.Parse(prices)) : [],
        Jigs = files.TryGetValue(JigsFile.Name, out var jigs) ? gathered.TakeMany(JigsFile.Parse(jigs)) : [],
    };

    // While they cannot be read, any name will do: one fault is told once.
    private static ImmutableArray<Occasion>? Occasions(IReadOnlyDictionary<string, byte[]> files, Gathered gathered)
    {
        if (!files.TryGetValue(OccasionsFile.Name, out var bytes)) return [];
        var outcome = OccasionsFile.Parse(bytes);
        var read = gathered.TakeMany(outcome);
        return outcome is FileOutcome<ImmutableArray<Occasion>>.Read ? read : null;
    }

    private static ImmutableArray<Design> ReadDesigns(IReadOnlyDictionary<string, byte[]> files, Gathered gathered)
    {
        var designs = ImmutableArray.CreateBuilder<Design>();
        var owners = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (name, bytes) in files.Where(file => IsDesign(file.Key)).OrderBy(file => file.Key, StringComparer.Ordinal))
        {
            if (gathered.Take(DesignFile.Parse(name, bytes)) is not { } design) continue;
            designs.Add(design);
            if (!owners.TryAdd(design.Key, name)) gathered.Problems.Add(new(name, 0, 0, design.Key, $"a key of its own; {owners[design.Key]} has it too"));
        }

        return designs.ToImmutable();
    }

    private static bool IsDesign(string name) =>
        name.StartsWith(DesignFile.Folder + "/", StringComparison.Ordinal) && name.EndsWith(".json", StringComparison.OrdinalIgnoreCase);

    private sealed class Gathered
    {
        private readonly List<FileDoubt> doubts = [];
        private int more;

        internal List<FileProblem> Problems { get; } = [];

        internal T? Take<T>(FileOutcome<T> outcome)
            where T : class => Sort(outcome) is { } read ? read.Content : null;

        internal ImmutableArray<T> TakeMany<T>(FileOutcome<ImmutableArray<T>> outcome) => Sort(outcome) is { } read ? read.Content : [];

        internal ImmutableArray<T> Missing<T>(string file)
        {
            Problems.Add(new(file, 0, 0, "", FileMessages.TheFile));
            return [];
        }

        internal FileOutcome<T> Outcome<T>(T content) => Problems.Count == 0
            ? new FileOutcome<T>.Read(content, [.. doubts])
            : new FileOutcome<T>.Refused([.. Problems], more);

        private FileOutcome<T>.Read? Sort<T>(FileOutcome<T> outcome)
        {
            switch (outcome)
            {
                case FileOutcome<T>.Read read:
                    doubts.AddRange(read.Doubts);
                    return read;
                case FileOutcome<T>.Refused refused:
                    Problems.AddRange(refused.Problems);
                    more += refused.More;
                    break;
            }

            return null;
        }
    }
}
