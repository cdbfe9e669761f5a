using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Building;

/// <content>From strips to panels and blanks.</content>
internal sealed partial class PlanBuilder
{
    private void MakePanels(List<PlacedStrip> strips)
    {
        var names = GlueUpNames.Of(problem, placement);
        foreach (var index in placement.Panels)
        {
            var panel = problem.Panels[index];
            ImmutableArray<PlacedStrip> mine = [.. strips.Where(s => s.Segment.Panel == index)];
            MakePanel(panel, names.Id(index), panel.Done is { } done
                ? [.. done.Strips.Select(d => mine.First(s => s.Piece.Id == d.Piece) with { Sister = d.Sister, IsTurnedOver = d.TurnedOver })]
                : InOrder(panel, mine, names.Former(index)));
        }
    }

    private ImmutableArray<PlacedStrip> InOrder(PanelCandidate panel, ImmutableArray<PlacedStrip> strips, GlueUp? former)
    {
        var all = new PanelStrips(problem, panel, [.. strips.Select(s => s.Segment)]);
        var order = all.InOrder(former)
            ?? throw new InvalidOperationException($"A glue-up of {panel.Part.Key}: its strips find no order. Maybe the placement was not checked first.");

        // Of two sisters the upper layer is turned over, so that both faces of the saw cut between them lie up.
        return
        [
            .. order.Select(i => all.Sisters[i] < 0 ? strips[i] : strips[i] with
            {
                Sister = strips[all.Sisters[i]].Piece.Id,
                IsTurnedOver = strips[i].Segment.Lane > strips[all.Sisters[i]].Segment.Lane,
            }),
        ];
    }

    private void MakePanel(PanelCandidate panel, string id, ImmutableArray<PlacedStrip> strips)
    {
        var thinnest = strips.Min(s => s.Piece.Thickness);
        var spread = strips.Where(s => s.Piece.Thickness == thinnest).Max(s => s.Spread);
        ImmutableArray<Piece> alike =
        [
            .. strips.Select(s => bench.TakeThickness(new Stage(Operation.PlaneToThickness), s.Piece, s.Piece.Thickness - thinnest)),
        ];
        var glued = bench.Glue(new Stage(Operation.GlueUp, GlueUp: id), id, alike);
        glueUps.Add(Describe(panel, id, strips, glued, spread));
        if (panel.Shares.All(s => !placement.Made[s.GiftIndex]))
        {
            // Glued already, but the rest of its gift finds no wood any more.
            leftovers.Add(glued);
            return;
        }

        var flat = bench.TakeThickness(new Stage(Operation.FlattenPanel), glued, shop.Allowances.PanelFlatten.Mean);
        var layers = panel.Needs.Layers > 1 ? bench.Resaw(new Stage(Operation.Resaw), flat, panel.Needs.Layers) : [flat];
        var open = panel.Shares.Where(s => placement.Made[s.GiftIndex]).Select(s => (Gift: problem.Gifts[s.GiftIndex], s.Part, s.Count)).ToList();
        foreach (var layer in layers)
        {
            CutBlanks(panel, layer, open);
        }
    }

    /// <summary>Cuts a layer into blanks: each gift in turn gets its copies, what is over is left.</summary>
    private void CutBlanks(PanelCandidate panel, Piece layer, List<(GiftDemand Gift, Part Part, int Count)> open)
    {
        var part = panel.Part;
        var planed = bench.TakeThickness(new Stage(Operation.PlanePanel), layer, layer.Thickness - panel.Needs.PlanedThickness);
        var trimmed = bench.TrimWidth(new Stage(Operation.TrimWidth), planed, part.Width);
        var outputs = new List<(string Id, Length Length)>();
        var takers = new List<(GiftDemand Gift, Part Part)?>();
        for (var i = 0; i < panel.Needs.Blanks; i++)
        {
            var next = open.FindIndex(o => o.Count > 0 && Copies(o.Gift, o.Part).Count + takers.Count(t => t?.Gift == o.Gift) < o.Part.Count);
            if (next < 0)
            {
                takers.Add(null);
                outputs.Add(($"{layer.Id}/spare{takers.Count(t => t is null)}", part.Length));
                continue;
            }

            var (gift, theirs, count) = open[next];
            open[next] = (gift, theirs, count - 1);
            outputs.Add((PartId(gift, theirs, Copies(gift, theirs).Count + takers.Count(t => t?.Gift == gift) + 1), part.Length));
            takers.Add((gift, theirs));
        }

        foreach (var (blank, taker) in CrosscutBlanks(trimmed, outputs, part.Length).Zip(takers))
        {
            if (taker is var (gift, theirs))
            {
                Copies(gift, theirs).Add(blank);
            }
            else
            {
                leftovers.Add(blank);
            }
        }
    }

    private List<Piece> Copies(GiftDemand gift, Part part)
    {
        if (!parts.TryGetValue((gift.Index, part.Key), out var copies))
        {
            parts[(gift.Index, part.Key)] = copies = [];
        }

        return copies;
    }

    /// <summary>Squares the marked end, cuts the outputs, and keeps the rest when it is worth keeping.</summary>
    private IEnumerable<Piece> CrosscutBlanks(Piece piece, List<(string Id, Length Length)> outputs, Length setting)
    {
        var kerf = shop.TableSaw.Kerf;
        var end = shop.Allowances.EndTrim.Mean;
        var wanted = outputs.Count;
        var rest = piece.Length - end - Length.Sum(outputs.Select(o => o.Length)) - (kerf * (wanted - 1)) - kerf;
        if (rest >= shop.KeepLength)
        {
            outputs.Add(($"{piece.Id}/rest", rest));
        }

        var cut = bench.Crosscut(new Stage(Operation.CrosscutBlanks), piece, [.. outputs], end, setting);
        if (cut.Length > wanted)
        {
            leftovers.Add(cut[^1]);
        }

        return cut.Take(wanted);
    }

    private GlueUp Describe(PanelCandidate panel, string id, ImmutableArray<PlacedStrip> strips, Piece glued, Length spread)
    {
        var needs = panel.Needs;
        return new GlueUp
        {
            Id = id,
            Gift = problem.Gifts[panel.GiftIndex].Gift.Label,
            Part = panel.Part.Key,
            Also = panel.Done?.Also ?? [.. panel.Shares.Skip(1).Select(s => new GlueUpShare(problem.Gifts[s.GiftIndex].Gift.Label, s.Part.Key, s.Count))],
            Blanks = needs.Blanks,
            Layers = needs.Layers,
            Strips =
            [
                .. strips.Select((s, i) => new Strip(s.Piece.Id, s.Pattern.Offcut.Label, s.Lane.RoughWidth, s.Piece.Width, s.Piece.Length, s.Piece.Thickness)
                {
                    Layers = s.Pattern.Layers, HeartUp = HeartUp(panel.Wish.Hearts, i), Sister = s.Sister, TurnedOver = s.IsTurnedOver,
                }),
            ],
            Overlap = glued.Length,
            RoughWidth = glued.Width,
            TargetWidth = panel.Part.Width,
            ThicknessLadder = needs.ThicknessLadder(glued.Thickness, spread),
            WidthLadder = needs.WidthLadder(glued.Width, Length.Zero),
            ChancePerMille = 0,
            LeastContrastHundredths = LeastContrast(strips),
            ClampsNeeded = Clamping.Needed(glued.Length, shop),
        };
    }

    private static bool? HeartUp(HeartSides hearts, int place) => hearts switch
    {
        HeartSides.Alike => true,
        HeartSides.Alternating => place % 2 == 0,
        _ => null,
    };

    private static int LeastContrast(ImmutableArray<PlacedStrip> strips)
    {
        if (strips.Length < 2)
        {
            return 0;
        }

        var least = strips.Zip(strips.Skip(1)).Min(pair => ColourDifference.Ciede2000(
            SpeciesTable.Get(pair.First.Pattern.Offcut.Species).Colour, SpeciesTable.Get(pair.Second.Pattern.Offcut.Species).Colour));
        return (int)Math.Floor(least * 100);
    }

    private void MakeBoards(List<PlacedStrip> strips)
    {
        foreach (var group in strips.Where(s => s.Segment.Solid >= 0).GroupBy(s => s.Segment.Solid).OrderBy(g => g.Key))
        {
            var demand = problem.Runs[group.Key];
            foreach (var (strip, run) in group.Zip(demand.Runs))
            {
                MakeBoard(problem.Gifts[demand.GiftIndex], demand.Needs with { Run = run }, strip);
            }
        }
    }

    private void MakeBoard(GiftDemand gift, SolidNeeds needs, PlacedStrip strip)
    {
        boards.Add(new BoardRun(
            gift.Gift.Label, needs.Run.Mark, strip.Piece.Id, strip.Pattern.Offcut.Label,
            strip.Lane.RoughWidth, strip.Piece.Width, strip.Piece.Length, strip.Piece.Thickness)
        { Layers = strip.Pattern.Layers });
        var planed = bench.TakeThickness(new Stage(Operation.PlaneToThickness), strip.Piece, strip.Piece.Thickness - needs.PlanedThickness);
        var trimmed = bench.TrimWidth(new Stage(Operation.TrimWidth), planed, needs.PartWidth);
        var marks = needs.Run.Members;
        var members = needs.Members;
        var cut = CrosscutBlanks(trimmed, [.. members.Select((m, i) => ($"{gift.Gift.Label}-{marks[i].Mark}", m.Length))], members[0].Length).ToList();
        for (var i = 0; i < cut.Count; i++)
        {
            if (!placement.Made[gift.Index])
            {
                leftovers.Add(cut[i]);
                continue;
            }

            Place(gift, marks[i].Part, marks[i].Copy, cut[i]);
        }
    }

    private void Place(GiftDemand gift, string part, int copy, Piece piece)
    {
        var count = gift.Product.Parts.First(p => p.Key == part).Count;
        if (!parts.TryGetValue((gift.Index, part), out var made))
        {
            parts[(gift.Index, part)] = made = [.. Enumerable.Repeat(piece, count)];
        }

        made[copy - 1] = piece;
    }
}
