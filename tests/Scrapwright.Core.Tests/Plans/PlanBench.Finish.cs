using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Chances;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Plans;

internal sealed partial class PlanBench
{
    /// <summary>Works the assembly steps of a gift; rods come from the given rod.</summary>
    public PlanBench Assemble(string gift, RodUse? rod, params MadePart[] parts)
    {
        var product = ((DesignOutcome.Derived)designs.First(d => d.Gift.Label == gift).Outcome).Product;
        made.Add(new MadeGift(gift, [.. parts]));
        for (var i = 0; i < product.Assembly.Length; i++)
        {
            var step = product.Assembly[i];
            var ids = parts.Where(p => step.Parts.Contains(p.Part)).ToArray();
            Add(step.Operation, step.Station, [.. Works(step, product, ids, rod)], gift: gift, index: i);
        }

        if (rod is not null)
        {
            var used = Length.Sum(rod.Pieces.Select(id => pieces[id].Length)) + (Shop.TableSaw.Kerf * rod.Pieces.Length);
            rods.Add(rod with { Left = Length.Max(Length.Zero, rod.Length - used) });
        }

        return this;
    }

    public Plan Build()
    {
        var parts = made.SelectMany(m => m.Parts).Select(p => p.Piece).ToHashSet();
        var leftovers = pieces.Values.Where(p => !parts.Contains(p.Id))
            .OrderBy(p => Array.IndexOf([.. offcuts.Keys], p.Lanes[0].Offcut)).ThenBy(p => produced.IndexOf(p.Id))
            .Select(p => new Leftover(p, IsKept(p) ? LeftoverPlace.Pile : LeftoverPlace.ScrapBin)).ToImmutableArray();
        var gifts = made.ToImmutableArray();
        var scores = PlanScores.Of(request, designs, gifts, [.. glueUps], [.. boards], [.. boardsGlued]);
        return PlanChances.Stated(new Plan
        {
            Request = request,
            Fingerprint = PlanJson.Fingerprint(request),
            Made = gifts,
            Unmade = [.. designs.Where(d => made.All(m => m.Gift != d.Gift.Label)).Select(d => new UnmadeGift(d.Gift.Label, Shortages.For(d, leftovers, request)))],
            GlueUps = [.. glueUps],
            Faced = [.. boardsGlued],
            Boards = [.. boards],
            Steps = [.. WithStops(parts)],
            Leftovers = leftovers,
            Ledger = [.. offcuts.Values.Select(o => Row(o.Label, Volume.Of(o.Length, o.Width, o.Thickness), parts, leftovers))],
            Rods = [.. rods],
            Shopping = ShoppingList.For(request, designs, gifts, [.. rods]),
            Levels = [.. Enum.GetValues<LevelKind>().Where(k => k != LevelKind.StripsAsBefore).Select(k => new Level { Kind = k, Value = scores.ValueOf(k), Bound = scores.ValueOf(k) })],
        }, designs);
    }

    private IEnumerable<Work> Works(AssemblyStep step, Product product, MadePart[] parts, RodUse? rod)
    {
        if (step.Operation == Operation.CutRods && rod is not null)
        {
            var cut = parts.Select(p => (p, Part: product.Parts.First(q => q.Key == p.Part)))
                .Select(p => new Piece(p.p.Piece, p.Part.Length, p.Part.Width, p.Part.Thickness, [])).ToImmutableArray();
            yield return new Work { In = [rod.Id], Out = cut, Kerf = Shop.TableSaw.Kerf, Cuts = cut.Length };
            yield break;
        }

        foreach (var part in parts)
        {
            var piece = pieces[part.Piece];
            var taken = step.Operation == Operation.Sand && piece.Lanes.Length > 0 ? Shop.Allowances.Sand.Mean * 2 : Length.Zero;
            yield return new Work { In = [piece.Id], Out = [piece with { Thickness = piece.Thickness - taken }], Taken = taken };
        }
    }

    private bool IsKept(Piece p) =>
        p.Length >= Shop.KeepLength && p.Width >= Shop.KeepWidth && p.Thickness >= Shop.KeepThickness && !defects.Contains(p.Id);

    private LedgerRow Row(string offcut, Volume whole, HashSet<string> parts, ImmutableArray<Leftover> leftovers)
    {
        Volume Of(IEnumerable<Piece> some) => Volume.Sum(some.SelectMany(p => p.Lanes.Where(l => l.Offcut == offcut).Select(l => Volume.Of(p.Length, l.Width, p.Thickness))));
        return new LedgerRow
        {
            Offcut = offcut,
            In = whole,
            Faced = faced.GetValueOrDefault(offcut),
            Parts = Of(pieces.Values.Where(p => parts.Contains(p.Id))),
            Kept = Of(leftovers.Where(l => l.Place == LeftoverPlace.Pile).Select(l => l.Piece)),
            Scrap = Of(leftovers.Where(l => l.Place == LeftoverPlace.ScrapBin).Select(l => l.Piece)),
            Waste = [.. lost.Where(l => l.Key.Offcut == offcut && l.Value != Volume.Zero).OrderBy(l => l.Key.Operation).Select(l => new WasteRow(l.Key.Operation, l.Value))],
        };
    }

    /// <summary>The stop of a crosscut is set to the first piece that is used afterwards.</summary>
    private IEnumerable<Step> WithStops(HashSet<string> parts)
    {
        var all = steps.SelectMany(s => s.Works).ToList();
        foreach (var step in steps)
        {
            var isCrosscut = step.Operation is Operation.RoughCrosscut or Operation.CrosscutStrips or Operation.CrosscutBlanks;
            yield return !isCrosscut ? step : step with
            {
                Works = [.. step.Works.Select(w => w with
                {
                    Setting = (w.Out.FirstOrDefault(p => parts.Contains(p.Id) || all.Skip(all.IndexOf(w) + 1).Any(later => later.In.Contains(p.Id))) ?? w.Out[0]).Length,
                })],
            };
        }
    }
}
