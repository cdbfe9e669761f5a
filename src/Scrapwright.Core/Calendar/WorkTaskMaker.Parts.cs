using System.Collections.Immutable;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <content>Coats, long tasks divided, and what to lay out.</content>
internal sealed partial class WorkTaskMaker
{
    // Oil that soaks longer than twice what it should gets tacky: estimate; the label of the tin comes first.
    private const int LongestSoak = 2;

    /// <summary>Finishing, coat by coat: each round of a coat is a task, those without a wait between them one.</summary>
    private void AddCoats(Step step, Finish finish, ImmutableArray<string> gifts, ImmutableArray<Work> works)
    {
        var rounds = Rounds(finish);
        var whole = works.Sum(w => minutes.Of(step, w));
        var handsOn = Math.Max(1, rounds.Sum(r => r.HandsOnMinutes));
        var setting = Setting(step.Operation, step.Station, finish.Key, finish.Name);
        var pace = rules.Paces.For(step.Operation, finish.Key);
        WorkTask? before = null;
        foreach (var (i, round) in rounds.Index())
        {
            // The shop's minutes are for the whole finish of a piece; each round has its share of them.
            var usual = whole * round.HandsOnMinutes / handsOn;
            var each = TaskMinutes.By(pace, usual);
            var task = new WorkTask
            {
                Id = $"{TaskNames.Of(Plan, step, step.Station, gifts)}/{(round.Coat == 0 ? "after" : $"coat{round.Coat}.{1 + rounds.Take(i).Count(r => r.Coat == round.Coat)}")}",
                Title = $"{(round.Coat == 0 ? "After the last coat" : $"Coat {round.Coat} of {finish.Coats}")}, {step.Gift}: {round.Text}",
                Operation = step.Operation,
                Station = step.Station,
                Gifts = gifts,
                Steps = [step.Number],
                Pieces = [.. works.SelectMany(w => w.In).Distinct()],
                Minutes = TaskMinutes.Likely(each),
                UsualMinutes = TaskMinutes.Likely(usual),
                PaceSetting = pace.Setting,
                LeastMinutes = TaskMinutes.Least(pace, each),
                MostMinutes = TaskMinutes.Most(pace, each),
                // Buffing needs neither finish nor warmth.
                Setting = round.Coat == 0 ? "" : setting,
                LeastCelsius = round.Coat == 0 ? null : finish.TemperatureCelsius.Least,
                MostCelsius = round.Coat == 0 ? null : finish.TemperatureCelsius.Most,
                WaitMinutes = round.WaitMinutes,
                LeastWaitMinutes = LeastWait(finish, round),
                LayOut = round.Coat == 0 ? ["a clean dry cloth"] : LayOut(finish),
            };
            if (before is null) Add(task, works, (round.WaitMinutes, round.WaitMinutes));
            else
            {
                tasks.Add(task);
                var last = rounds[i - 1];
                // Within a coat the next round must come in time, else what was put on cannot be wiped off any more.
                links[(before.Id, task.Id)] = new(before.Id, task.Id, last.WaitMinutes, last.Coat == round.Coat ? last.WaitMinutes * LongestSoak : null);
            }

            before = task;
        }

        foreach (var piece in works.SelectMany(w => w.Out)) sources[piece.Id] = new(before!.Id, before.WaitMinutes, before.WaitMinutes);
    }

    // A soak is timed by the maker; only what dries by itself takes shorter or longer. Definition: 60 minutes an hour.
    private static int? LeastWait(Finish finish, FinishStep round) =>
        round.Coat > 0 && round.Coat < finish.Coats && round.WaitMinutes == finish.RecoatMinutes.Most ? finish.RecoatMinutes.Least
        : round.Coat > 0 && round.Coat == finish.Coats && round.WaitMinutes == finish.HandleHours.Most * 60 ? finish.HandleHours.Least * 60
        : null;

    private static ImmutableArray<FinishStep> Rounds(Finish finish)
    {
        var rounds = ImmutableArray.CreateBuilder<FinishStep>();
        foreach (var step in FinishSteps.For(finish))
        {
            if (rounds.Count > 0 && rounds[^1] is { WaitMinutes: 0 } last && last.Coat == step.Coat)
                rounds[^1] = new(step.Coat, $"{last.Text} {step.Text}", last.HandsOnMinutes + step.HandsOnMinutes, step.WaitMinutes);
            else rounds.Add(step);
        }

        return rounds.ToImmutable();
    }

    /// <summary>The works of a task that is too long, in as few parts of about the same length as will do, divided between pieces. What is glued or assembled stays whole.</summary>
    private List<ImmutableArray<Work>> Divided(Step step, Station station, ImmutableArray<Work> works)
    {
        var longest = (IsMachine(station) ? rules.LongestMachineMinutes : rules.LongestMinutes) - minutes.SetUp(step.Operation);
        var pace = Pace(step, station);
        var whole = works.Sum(w => TaskMinutes.By(pace, minutes.Of(step, w)));
        if (longest is not { } most || whole <= most || IsGluing(step.Operation) || step.Operation == Operation.DryFit) return [works];
        var share = whole / Math.Ceiling(whole / Math.Max(1, most));
        var parts = new List<ImmutableArray<Work>>();
        var part = ImmutableArray.CreateBuilder<Work>();
        var sum = 0.0;
        foreach (var work in works)
        {
            var one = TaskMinutes.By(pace, minutes.Of(step, work));
            if (part.Count > 0 && (sum + one > Math.Max(1, most) || sum >= share))
            {
                parts.Add(part.ToImmutable());
                part.Clear();
                sum = 0;
            }

            part.Add(work);
            sum += one;
        }

        parts.Add(part.ToImmutable());
        return parts;
    }

    private ImmutableArray<string> LayOut(Step step, ImmutableArray<Work> works) => step.Operation switch
    {
        Operation.GlueUp or Operation.FaceGlue or Operation.Assemble => [Glue(step.Operation).Name],
        Operation.Drill => [.. Bits(works).Select(d => $"drill bit {Shown(d)}")],
        Operation.Sand when index.Gift(step.Gift) is { } gift => [.. Grits(gift)],
        _ => [],
    };

    // What has been wiped with a drying oil heats up by itself: see the cautions of the finish.
    private static ImmutableArray<string> LayOut(Finish finish) =>
    [
        finish.Name,
        .. finish.Method == FinishMethod.Brush ? ["a brush"] : (string[])["clean rags"],
        .. finish.IsDryingOil ? ["a metal tin of water for the rags"] : (string[])[],
    ];

    private IEnumerable<Length> Bits(ImmutableArray<Work> works)
    {
        var pieces = works.SelectMany(w => w.In).ToHashSet(StringComparer.Ordinal);
        return from made in Plan.Made
               from part in made.Parts
               where pieces.Contains(part.Piece)
               from hole in index.Product(made.Gift)?.Parts.FirstOrDefault(p => p.Key == part.Part)?.Holes ?? []
               group hole by hole.Diameter into diameters
               orderby diameters.Key
               select diameters.Key;
    }

    private IEnumerable<string> Grits(Gifts.Gift gift)
    {
        var grits = SandingAdvice.Grits(SandingAdvice.GritsFor(Shop, FinishTable.Find(FinishAdvice.KeyFor(gift, Shop))).Sequence);
        return grits.IsEmpty ? [] : [$"abrasive {string.Join(", ", grits)}"];
    }

    private string Shown(Length length) => length.ToText((Shop.Unit == LengthUnit.Inch ? LengthStyle.Inches with { Denominator = Shop.Denominator } : LengthStyle.Millimetres) with { Rounding = Rounding.Up });
}
