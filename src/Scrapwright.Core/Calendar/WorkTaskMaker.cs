using System.Collections.Immutable;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Fits;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Calendar;

/// <summary>Makes the tasks of a plan, step by step.</summary>
internal sealed partial class WorkTaskMaker
{
    private readonly PlanIndex index;
    private readonly WorkTaskRules rules;
    private readonly WorkUse use;
    private readonly TaskMinutes minutes;
    private readonly bool mustSettle;
    private readonly List<WorkTask> tasks = [];
    private readonly Dictionary<(string Before, string After), ScheduleLink> links = [];
    private readonly Dictionary<string, StationSetting> settings = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Source> sources = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Source> cut = new(StringComparer.Ordinal);

    internal WorkTaskMaker(PlanIndex index, WorkTaskRules rules)
    {
        (this.index, this.rules) = (index, rules);
        use = new(Plan);
        minutes = new(index);
        mustSettle = PileMoisture.Of(Plan) is not null;
    }

    private Plan Plan => index.Plan;

    private Shop Shop => Plan.Request.Shop;

    internal WorkTasks Make()
    {
        foreach (var step in Plan.Steps)
        {
            // Milling comes before the first gift is put together.
            if (step.AssemblyIndex >= 0 && cut.Count == 0)
                foreach (var (piece, source) in sources) cut[piece] = source;
            var open = step.Works.Index().Where(w => !use.IsDone(step, w.Index)).ToArray();
            foreach (var group in open.GroupBy(w => (Station: StationOf(step, w.Item), Gifts: string.Join('\n', use.Gifts(step, w.Index)))))
                Add(step, group.Key.Station, use.Gifts(step, group.First().Index), [.. group.Select(w => w.Item)]);
        }

        return new()
        {
            Tasks = [.. tasks],
            Links = [.. links.Values],
            Settings = [.. settings.Values],
            Gifts = [.. Plan.Made.Select(m => new GiftReady(m.Gift, Last(m)))],
        };
    }

    // Hand tools have a pace of their own.
    private OperationPace Pace(Step step, Station station) => rules.Paces.For(step.Operation, station == step.Station ? "" : TimeReading.ByHand);

    private static Station StationOf(Step step, Work work) => work.Workaround == Workaround.HandTool ? Station.HandTools : step.Station;

    private ImmutableArray<ScheduleLast> Last(MadeGift made) =>
    [
        .. made.Parts.Select(p => sources.GetValueOrDefault(p.Piece)).OfType<Source>()
            .DistinctBy(s => s.Task).Select(s => new ScheduleLast(s.Task, s.WaitMinutes)),
    ];

    private void Add(Step step, Station station, ImmutableArray<string> gifts, ImmutableArray<Work> works)
    {
        if (step.Operation == Operation.Finish && index.Gift(step.Gift) is { } gift && FinishTable.Find(FinishAdvice.KeyFor(gift, Shop)) is { } finish)
        {
            AddCoats(step, finish, gifts, works);
            return;
        }

        var id = TaskNames.Of(Plan, step, station, gifts);
        var parts = Divided(step, station, works);
        foreach (var (i, part) in parts.Index()) Add(Task(step, station, gifts, part, parts.Count == 1 ? id : $"{id}#{i + 1}"), part, Wait(step));
    }

    private WorkTask Task(Step step, Station station, ImmutableArray<string> gifts, ImmutableArray<Work> works, string id)
    {
        var usual = works.Sum(w => minutes.Of(step, w));
        var pace = Pace(step, station);
        var each = TaskMinutes.By(pace, usual);
        var (_, machineWait) = Wait(step);
        return new()
        {
            Id = id,
            Title = TaskNames.Title(step, works.Sum(w => w.In.Length), gifts),
            Operation = step.Operation,
            Station = station,
            Gifts = gifts,
            Steps = [step.Number],
            GlueUp = step.GlueUp,
            Pieces = [.. works.SelectMany(w => w.In)],
            SmallPieces = works.Where(w => w.Workaround != Workaround.None).Sum(w => w.In.Length),
            Minutes = TaskMinutes.Likely(each),
            UsualMinutes = TaskMinutes.Likely(usual),
            PaceSetting = pace.Setting,
            LeastMinutes = TaskMinutes.Least(pace, each),
            MostMinutes = TaskMinutes.Most(pace, each),
            Setting = Setting(step.Operation, station),
            NeedsMachine = IsMachine(station),
            LeastCelsius = IsGluing(step.Operation) ? Glue(step.Operation).LeastCelsius : null,
            Clamps = ClampsOf(step),
            WaitMinutes = machineWait,
            SettleMinutes = Settle(step, works),
            LayOut = LayOut(step, works),
        };
    }

    private void Add(WorkTask task, ImmutableArray<Work> works, (int Hand, int Machine) wait)
    {
        tasks.Add(task);
        foreach (var piece in works.SelectMany(w => w.In))
            if (sources.GetValueOrDefault(piece) is { } source) Link(source, task);
        if (task.Operation == Operation.DryFit) LinkHeld(task);
        foreach (var piece in works.SelectMany(w => w.Out)) sources[piece.Id] = new(task.Id, wait.Hand, wait.Machine);
    }

    // A stand is fitted on what it holds: that has to be cut, sanded or not.
    private void LinkHeld(WorkTask task)
    {
        var held = task.Gifts.Select(index.Product).OfType<Designs.Product>().SelectMany(p => p.Fits).Select(f => f.HeldGift).Where(g => g.Length > 0).ToHashSet(StringComparer.Ordinal);
        foreach (var piece in Plan.Made.Where(m => held.Contains(m.Gift)).SelectMany(m => m.Parts))
            if (cut.GetValueOrDefault(piece.Piece) is { } source) Link(source, task);
    }

    private void Link(Source source, WorkTask task)
    {
        var wait = task.NeedsMachine ? source.MachineWaitMinutes : source.WaitMinutes;
        var key = (source.Task, task.Id);
        if (!links.TryGetValue(key, out var link) || link.LeastMinutes < wait) links[key] = new(source.Task, task.Id, wait);
    }

    private string Setting(Operation operation, Station station, string finish = "", string title = "")
    {
        var key = TaskNames.Setting(operation, station, finish);
        settings.TryAdd(key, new(key, $"{ShopWords.Of(station)}: {(title.Length > 0 ? title : ShopWords.Of(operation).ToLowerInvariant())}", station, operation, minutes.SetUp(operation)));
        return key;
    }

    // Sanding is by machine, as most do it: estimate.
    private static bool IsMachine(Station station) =>
        station is Station.TableSaw or Station.Jointer or Station.Planer or Station.Bandsaw or Station.DrillPress or Station.Router or Station.Sanding;

    private static bool IsGluing(Operation operation) => operation is Operation.GlueUp or Operation.FaceGlue or Operation.Assemble;

    private GlueTimes Glue(Operation operation) => GlueTimes.Of(Shop, operation, rules.GlueCelsius);

    private (int Hand, int Machine) Wait(Step step)
    {
        if (!IsGluing(step.Operation)) return (WorkContent.WaitMinutes(step.Operation, Shop), WorkContent.WaitMinutes(step.Operation, Shop));
        var glue = Glue(step.Operation);
        return (glue.Clamp, glue.Cure);
    }

    // An assembled thing is held by tape, weights or its own joints: it takes no clamps of the rack. Common practice, no source.
    private TaskClamps? ClampsOf(Step step) => step.Operation switch
    {
        Operation.GlueUp when Plan.GlueUps.FirstOrDefault(g => g.Id == step.GlueUp) is { ClampsNeeded: > 0, Strips.Length: > 1 } glueUp =>
            new(glueUp.RoughWidth, glueUp.ClampsNeeded, Glue(step.Operation).Clamp),
        // Over the faces clamps have to reach no farther than the board is thick.
        Operation.FaceGlue when Plan.Faced.FirstOrDefault(f => f.Label == TaskNames.BoardOf(step)) is { ClampsNeeded: > 0 } board =>
            new(board.Thickness, board.ClampsNeeded, Glue(step.Operation).Clamp),
        _ => null,
    };

    // Minutes until the wood that comes from the pile has settled; a piece that is worked keeps its offcut's name, so only its first step counts. Definition: 1440 minutes a day.
    private int Settle(Step step, ImmutableArray<Work> works) => !mustSettle ? 0 : works.SelectMany(w => w.In)
        .Where(piece => Plan.Steps.First(s => s.Works.Any(w => w.In.Contains(piece))).Number == step.Number)
        .Select(index.Offcut).OfType<Pile.Offcut>()
        .Select(o => SpeciesTable.FindKey(o.Species) is { } species && o.Thickness.IsPositive ? (int)Math.Ceiling(Acclimatisation.DaysEstimate(species, o.Thickness).Days * 1440) : 0)
        .DefaultIfEmpty(0).Max();

    private sealed record Source(string Task, int WaitMinutes, int MachineWaitMinutes);
}
