using System.Collections.Immutable;
using System.Text.Json;
using Scrapwright.Client.Api;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Storage;
using Scrapwright.Web.Planning;

namespace Scrapwright.Web;

/// <summary>The one place where outcomes become answers of the API: status, body, and what is wrong in which field.</summary>
internal static class Answers
{
    private const int MostNamed = 8;

    /// <summary>200 with a value.</summary>
    internal static IResult Ok<T>(T value) => TypedResults.Json(value, PlanJson.Options);

    /// <summary>202 with a value: begun, not ended.</summary>
    internal static IResult Accepted<T>(T value) => TypedResults.Json(value, PlanJson.Options, statusCode: StatusCodes.Status202Accepted);

    /// <summary>201 with a value.</summary>
    internal static IResult Created<T>(T value) => TypedResults.Json(value, PlanJson.Options, statusCode: StatusCodes.Status201Created);

    /// <summary>204.</summary>
    internal static IResult Nothing() => TypedResults.NoContent();

    /// <summary>A refusal.</summary>
    internal static IResult Refuse(int status, string title, params ReadOnlySpan<FieldProblem> problems) =>
        Refuse(new ApiProblem { Status = status, Title = title, Problems = [.. problems] });

    /// <summary>400 for values that are wrong.</summary>
    internal static IResult Invalid(ImmutableArray<FieldProblem> problems) => Refuse(new ApiProblem
    {
        Status = StatusCodes.Status400BadRequest,
        Title = problems.Length == 1 ? "One value is wrong; nothing was changed." : $"{problems.Length} values are wrong; nothing was changed.",
        Problems = problems,
    });

    /// <summary>404 for a row that is not there.</summary>
    internal static IResult Missing(string what, string id) =>
        Refuse(StatusCodes.Status404NotFound, $"There is no such {what}.", new FieldProblem("id", id, $"the id of a {what} of this workshop"));

    /// <summary>409 for labels that stand on something else.</summary>
    internal static IResult LabelsTaken(string what, IEnumerable<string> labels) => Refuse(
        StatusCodes.Status409Conflict,
        $"Another {what} has that label; nothing was changed.",
        [.. labels.Select(label => new FieldProblem("label", label, "a label that is not in use"))]);

    /// <summary>201 with the only row added, or why it was not.</summary>
    internal static IResult Of<TStored, TRow>(AddOutcome<TStored> outcome, string what, Func<TStored, TRow> row) => outcome switch
    {
        AddOutcome<TStored>.Added added => Created(row(added.Rows[0])),
        AddOutcome<TStored>.LabelsTaken taken => LabelsTaken(what, taken.Labels.Select(l => l.Label)),
        _ => throw new InvalidOperationException($"Unknown outcome {outcome}."),
    };

    /// <summary>200 with the row as it is now, or why it was not changed.</summary>
    internal static IResult Of<TStored, TRow>(ChangeOutcome<TStored> outcome, string what, Func<TStored, TRow> row) => outcome switch
    {
        ChangeOutcome<TStored>.Changed changed => Ok(row(changed.Row)),
        ChangeOutcome<TStored>.LabelTaken taken => LabelsTaken(what, [taken.Label]),
        ChangeOutcome<TStored>.Missing missing => Missing(what, missing.Id.ToString()),
        _ => throw new InvalidOperationException($"Unknown outcome {outcome}."),
    };

    /// <summary>What the success holds, or why nothing was replaced.</summary>
    internal static async Task<IResult> OfAsync(ReplaceOutcome outcome, Func<Task<IResult>> replaced) => outcome switch
    {
        ReplaceOutcome.Replaced => await replaced(),
        ReplaceOutcome.NotEmpty => Refuse(
            StatusCodes.Status409Conflict,
            "The workshop is not empty; nothing was changed.",
            new FieldProblem("replace", "false", "true, to put the new contents in place of the old")),
        ReplaceOutcome.LabelsTaken taken => Invalid(
        [
            .. taken.Pile.Select(l => new FieldProblem($"pile.csv, offcut {l.Index + 1}, label", l.Label, "a label that stands there once")),
            .. taken.Gifts.Select(l => new FieldProblem($"gifts.csv, gift {l.Index + 1}, gift", l.Label, "a label that stands there once")),
        ]),
        ReplaceOutcome.NamesTaken taken => Invalid([.. taken.Names.Select(l => new FieldProblem($"occasions.csv, occasion {l.Index + 1}, occasion", l.Label, "a name that stands there once"))]),
        _ => throw new InvalidOperationException($"Unknown outcome {outcome}."),
    };

    /// <summary>204 when the occasion is removed, or why it is not.</summary>
    internal static IResult Of(RemoveOccasionOutcome outcome, long id) => outcome switch
    {
        RemoveOccasionOutcome.Removed => Nothing(),
        RemoveOccasionOutcome.Missing => Missing("occasion", $"{id}"),
        RemoveOccasionOutcome.HasGifts gifts => Refuse(
            StatusCodes.Status409Conflict,
            "Gifts are for that occasion; nothing was changed.",
            new FieldProblem("occasion", string.Join(", ", gifts.Labels.Take(MostNamed)) + (gifts.Labels.Length > MostNamed ? ", …" : ""), "no gift for it: give them another occasion first")),
        _ => throw new InvalidOperationException($"Unknown outcome {outcome}."),
    };

    /// <summary>200 with what was done, or why the gifts cannot be given.</summary>
    internal static IResult Of(StoredHandOver done) => done.Outcome switch
    {
        HandOver.Done => Ok(new GiftsGiven(done.Gifts, [.. done.Given.Select(g => g.Id)], done.Before)),
        HandOver.NoGifts => NotGiven(new FieldProblem("gifts", "0", "at least one gift for the occasion to give")),
        HandOver.TooEarly early => NotGiven(new FieldProblem("on", $"{early.Date:yyyy-MM-dd}", "a day that has come")),
        HandOver.NoSuchGift gift => NotGiven(new FieldProblem("stay", gift.Label, "the label of a gift for the occasion")),
        HandOver.HoldsOne one => NotGiven(new FieldProblem("stay", $"{one.Holder} holds {one.Inside}", "both to be given or both to stay")),
        HandOver.NoOccasion => Missing("occasion", ""),
        _ => throw new InvalidOperationException($"Unknown outcome {done.Outcome}."),
    };

    private static IResult NotGiven(FieldProblem problem) => Refuse(StatusCodes.Status409Conflict, "The gifts cannot be given so; nothing was changed.", problem);

    /// <summary>202 with the run, or why it does not begin.</summary>
    internal static IResult Of(StartOutcome outcome) => outcome switch
    {
        StartOutcome.Started started => Accepted(started.Status),
        StartOutcome.Busy busy => Refuse(StatusCodes.Status409Conflict, "A search is going on already. Cancel it or wait for its end.", new FieldProblem("run", busy.Status.Run.ToString(), "no run going on")),
        StartOutcome.NothingToPlan => Refuse(StatusCodes.Status409Conflict, "There is no gift to plan for. Add one first.", new FieldProblem("gifts", "0", "at least 1")),
        _ => throw new InvalidOperationException($"Unknown outcome {outcome}."),
    };

    /// <summary>A refusal.</summary>
    internal static IResult Refuse(ApiProblem problem) => TypedResults.Text(
        JsonSerializer.Serialize(problem, PlanJson.Options), "application/problem+json", statusCode: problem.Status);
}
