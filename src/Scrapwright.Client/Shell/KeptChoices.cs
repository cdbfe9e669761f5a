using Scrapwright.Client.Api;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Client.Shell;

/// <summary>What the maker has decided, as last heard from the server. Each change is kept there at once, and in the plan that keeps to it.</summary>
public sealed class KeptChoices(Server server, Workshop workshop, PlanRun run, Undoing undoing)
{
    /// <summary>Told when anything here changes.</summary>
    public event Action? Changed;

    /// <summary>The choices.</summary>
    public MakerChoices Now { get; private set; } = new();

    /// <summary>True once they have been read.</summary>
    public bool IsLoaded { get; private set; }

    /// <summary>Reads them. They are read anew each time a screen that shows them opens: another screen may have emptied the workshop.</summary>
    public async Task LoadAsync()
    {
        if (await server.GetAsync<MakerChoices>(ApiRoutes.Choices) is Answer<MakerChoices>.Given given) Take(given.Value);
    }

    /// <summary>Changes them.</summary>
    /// <param name="change">From the choices as they are to those wanted.</param>
    /// <returns>Why not; null when it is done.</returns>
    public async Task<ApiProblem?> ChangeAsync(Func<MakerChoices, MakerChoices> change)
    {
        ArgumentNullException.ThrowIfNull(change);

        // Another screen may have decided something meanwhile: it must not be lost.
        if (await server.GetAsync<MakerChoices>(ApiRoutes.Choices) is not Answer<MakerChoices>.Given before) return new Answer<MakerChoices>.Unreachable().Problem;
        var answer = await server.PutAsync<MakerChoices>(ApiRoutes.Choices, change(before.Value));
        if (answer is not Answer<MakerChoices>.Given given) return answer.Problem;
        Take(given.Value);
        await StampPlanAsync(before.Value);
        return null;
    }

    /// <summary>Changes them so that the undo bar can take it back.</summary>
    /// <param name="thing">What was changed, as the maker calls it.</param>
    /// <param name="deed">What was done to it.</param>
    /// <param name="change">From the choices as they are to those wanted.</param>
    /// <param name="back">The way back.</param>
    /// <returns>Why not; null when it is done.</returns>
    public async Task<ApiProblem?> ChangeAsync(string thing, string deed, Func<MakerChoices, MakerChoices> change, Func<MakerChoices, MakerChoices> back)
    {
        var problem = await ChangeAsync(change);
        if (problem is null) undoing.Remember(new Undo(thing, async () => ApiProblem.Line(await ChangeAsync(back)), deed));
        return problem;
    }

    /// <summary>Keeps the strips of a glue-up in another order, in the plan and in the choices; the undo bar puts them back.</summary>
    /// <param name="glueUp">The glue-up as it is in the latest plan.</param>
    /// <param name="strips">Ids of its strips, lower edge first.</param>
    /// <returns>Why not; null when it is done.</returns>
    public async Task<ApiProblem?> OrderAsync(GlueUp glueUp, IEnumerable<string> strips)
    {
        ArgumentNullException.ThrowIfNull(glueUp);
        var former = Now.FindOrder(glueUp.Gift, glueUp.Part, glueUp.Strips.Select(ChosenStrip.Of));
        var problem = await OrderAsync(glueUp.Id, strips);
        if (problem is null) undoing.Remember(new Undo($"Order of {glueUp.Id}", () => PutBackAsync(glueUp, former), "changed"));
        return problem;
    }

    private async Task<string> PutBackAsync(GlueUp glueUp, ChosenOrder? former)
    {
        var problem = await OrderAsync(glueUp.Id, glueUp.Strips.Select(s => s.Piece));
        if (problem is null && former is null) problem = await ChangeAsync(choices => choices.WithoutOrderOf(glueUp));
        return problem is null ? "" : $"{problem.Title} {problem.Detail}";
    }

    private async Task<ApiProblem?> OrderAsync(string glueUp, IEnumerable<string> strips)
    {
        string[] pieces = [.. strips];
        var answer = await server.PostAsync<bool>(ApiRoutes.PlanOrder, new StripsInOrder(glueUp, [.. pieces]));
        if (answer.Problem is { } problem) return problem;
        await LoadAsync();

        // The server has worked out the same: reading a large plan again would take a phone seconds.
        if (run.Plan is { } plan && plan.GlueUps.FirstOrDefault(g => g.Id == glueUp) is { } old && old.Strips.All(s => pieces.Contains(s.Piece)))
            await run.ShowAsync(PlanOrder.With(plan, glueUp, [.. pieces.Select(piece => old.Strips.Select(s => s.Piece).ToList().IndexOf(piece))]));
        else if (run.IsLoaded) await run.FetchPlanAsync();
        await workshop.RefreshSummaryAsync();
        return null;
    }

    // A plan that keeps to the new choices is now the plan of these choices, here as on the server.
    private async Task StampPlanAsync(MakerChoices before)
    {
        await workshop.RefreshSummaryAsync();
        if (run.Plan is not { } plan || workshop.Summary.PlanIsStale) return;
        if (!Now.AskAll(before))
        {
            // Its bounds may be other ones.
            await run.FetchPlanAsync();
            return;
        }

        var request = plan.Request with { Choices = Now };
        var fingerprint = PlanJson.Fingerprint(request);
        if (fingerprint != plan.Fingerprint) await run.ShowAsync(plan with { Request = request, Fingerprint = fingerprint });
    }

    private void Take(MakerChoices choices)
    {
        (Now, IsLoaded) = (choices, true);
        Changed?.Invoke();
    }
}
