using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Building;

/// <content>Steps in working order.</content>
internal sealed partial class PlanBuilder
{
    private void AddMillingSteps()
    {
        AddStep(new Stage(Operation.FaceJoint, 1), Station.Jointer);
        for (var board = 0; board < boardsGlued.Count; board++)
        {
            AddStep(new Stage(Operation.FaceGlue, board), Station.Clamps);
        }

        AddStep(new Stage(Operation.RoughCrosscut), Station.TableSaw);
        AddStep(new Stage(Operation.RoughRip), Station.Bandsaw);
        AddStep(new Stage(Operation.FaceJoint), Station.Jointer);
        AddStep(new Stage(Operation.FacePlane), Station.Planer);
        AddStep(new Stage(Operation.EdgeJoint), Station.Jointer);
        AddStep(new Stage(Operation.Rip), Station.TableSaw);
        AddStep(new Stage(Operation.EdgeJoint, 1), Station.Jointer);
        AddStep(new Stage(Operation.ResawStrips), Station.Bandsaw);
        AddStep(new Stage(Operation.CleanSawnFaces), Station.Planer);
        AddStep(new Stage(Operation.CrosscutStrips), Station.TableSaw);
        AddStep(new Stage(Operation.PlaneToThickness), Station.Planer);
        foreach (var glueUp in glueUps)
        {
            AddStep(new Stage(Operation.GlueUp, GlueUp: glueUp.Id), Station.Clamps, glueUp.Gift);
        }

        AddStep(new Stage(Operation.FlattenPanel), Station.Planer);
        AddStep(new Stage(Operation.Resaw), Station.Bandsaw);
        AddStep(new Stage(Operation.PlanePanel), Station.Planer);
        AddStep(new Stage(Operation.TrimWidth), Station.TableSaw);
        AddStep(new Stage(Operation.CrosscutBlanks), Station.TableSaw);
    }

    private void AddStep(Stage stage, Station station, string gift = "")
    {
        var works = bench.Works(stage);
        if (!works.IsEmpty)
        {
            AddStep(stage.Operation, station, works, stage.GlueUp, gift, -1);
        }
    }

    private void AddStep(Operation operation, Station station, ImmutableArray<Work> works, string glueUp, string gift, int assemblyIndex) =>
        steps.Add(new Step
        {
            Number = steps.Count + 1,
            Station = station,
            Operation = operation,
            GlueUp = glueUp,
            Gift = gift,
            AssemblyIndex = assemblyIndex,
            Works = works,
            HandsOnMinutes = WorkContent.HandsOnMinutes(operation, works.Length, shop),
            WaitMinutes = WorkContent.WaitMinutes(operation, shop),
        });

    private void AddAssembly(GiftDemand gift)
    {
        for (var i = 0; i < gift.Product.Assembly.Length; i++)
        {
            var assembly = gift.Product.Assembly[i];
            var stage = new Stage(assembly.Operation, i, gift.Gift.Label);
            if (assembly.Operation == Operation.CutRods)
            {
                CutRods(gift, assembly, stage);
            }
            else
            {
                Assemble(gift, assembly, stage);
            }

            AddStep(assembly.Operation, assembly.Station, bench.Works(stage), "", gift.Gift.Label, i);
        }
    }

    private void CutRods(GiftDemand gift, AssemblyStep assembly, Stage stage)
    {
        var mine = assembly.Parts.SelectMany(p => parts[(gift.Index, p)]).ToDictionary(p => p.Id);
        foreach (var rod in rods)
        {
            ImmutableArray<Piece> cut = [.. rod.Pieces.Where(mine.ContainsKey).Select(id => mine[id])];
            if (!cut.IsEmpty)
            {
                bench.Note(stage, [], new Work { In = [rod.Id], Out = cut, Kerf = shop.TableSaw.Kerf, Cuts = cut.Length });
            }
        }
    }

    private void Assemble(GiftDemand gift, AssemblyStep assembly, Stage stage)
    {
        var listed = assembly.Parts.Select(p => parts[(gift.Index, p)]).ToList();
        if (assembly.Operation is Operation.DryFit or Operation.Assemble)
        {
            ImmutableArray<Piece> all = [.. listed.SelectMany(p => p)];
            bench.Note(stage, all, new Work { In = [.. all.Select(p => p.Id)], Out = all });
            return;
        }

        foreach (var copies in listed)
        {
            for (var c = 0; c < copies.Count; c++)
            {
                var before = copies[c];
                var taken = assembly.Operation == Operation.Sand && !before.Lanes.IsEmpty ? shop.Allowances.Sand.Mean * 2 : Length.Zero;
                copies[c] = before with { Thickness = before.Thickness - taken };
                bench.Note(stage, [before], new Work { In = [before.Id], Out = [copies[c]], Taken = taken });
            }
        }
    }
}
