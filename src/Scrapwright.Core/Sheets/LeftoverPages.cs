using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Sheets;

/// <summary>The last sheet: what goes back to the pile and what to the scrap bin.</summary>
internal static class LeftoverPages
{
    internal static void Add(PageFlow flow, PlanFacts facts)
    {
        var touched = facts.Plan.Steps.SelectMany(s => s.Works).SelectMany(w => w.Out).Select(p => p.Id).ToHashSet();
        var back = facts.Plan.Leftovers.Where(l => l.Place == LeftoverPlace.Pile && touched.Contains(l.Piece.Id)).ToArray();
        var untouched = facts.Plan.Leftovers.Where(l => l.Place == LeftoverPlace.Pile && !touched.Contains(l.Piece.Id)).ToArray();
        var bin = facts.Plan.Leftovers.Where(l => l.Place == LeftoverPlace.ScrapBin).ToArray();
        if (back.Length + untouched.Length + bin.Length == 0) return;
        var width = flow.WidthMm;
        var blocks = new List<Block>();
        if (back.Length > 0)
        {
            var table = new Table(facts.Hatches, Table.Fit(width, 1, new Column("", 7), new("Write on it", 40), new("Wood", 44), new("Expected size", 60), new("Reading", 30)));
            foreach (var leftover in back)
            {
                var species = facts.Species(leftover.Piece);
                var wood = species.Length == 1 ? new Cell(species[0], 9, Kind: CellKind.Swatch) : new Cell(facts.Wood(leftover.Piece), 9);
                table.Row(
                    [Cell.Tick, new(leftover.Piece.Id, 12, true), wood, new(facts.Sizes.Box(leftover.Piece.Length, leftover.Piece.Width, leftover.Piece.Thickness), 12, true), Cell.Pencil], 8.2);
            }

            blocks.AddRange(table.Blocks());
            blocks.Add(Block.Space(4));
        }

        if (untouched.Length > 0)
        {
            blocks.Add(Block.Heading("Not touched", width, 11));
            blocks.Add(Block.Paragraph(string.Join(", ", untouched.Select(l => l.Piece.Id)) + ".", width));
            blocks.Add(Block.Space(3));
        }

        if (bin.Length > 0)
        {
            blocks.Add(Block.Heading("Scrap bin", width, 11));
            blocks.Add(Block.Paragraph(string.Join(", ", bin.Select(l => l.Piece.Id)) + ".", width));
        }

        flow.Add("Back to the pile", $"{OverviewPages.Count(back.Length, "leftover")} to write on and keep", "Leftovers that go back to the pile.", blocks);
    }
}
