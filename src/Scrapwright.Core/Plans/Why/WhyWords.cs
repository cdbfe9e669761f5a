using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans.Why;

/// <summary>Answers in a maker's words.</summary>
public static class WhyWords
{
    private const double CubicMillimetresPerCubicInch = 25.4 * 25.4 * 25.4;

    /// <summary>The question, as a button says it.</summary>
    /// <param name="question">The question.</param>
    /// <param name="glueUps">How many glue-ups the part has.</param>
    /// <param name="layers">The most layers one of them is resawn into.</param>
    public static string Ask(WhyQuestion question, int glueUps, int layers)
    {
        ArgumentNullException.ThrowIfNull(question);
        return question.Kind switch
        {
            WhyKind.NotMade => "Why is it not made?",
            WhyKind.ThisOffcut => $"Why {question.Offcut}?",
            WhyKind.Resawing => layers > 1 ? "Why resaw?" : "Why not resaw?",
            WhyKind.GlueUps => glueUps > 1 ? $"Why {glueUps} glue-ups?" : "Why only one glue-up?",
            _ => throw new ArgumentOutOfRangeException(nameof(question), question.Kind, "Unknown question."),
        };
    }

    /// <summary>The answer in one or two sentences.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="index">The plan it is about.</param>
    public static string Say(WhyAnswer answer, PlanIndex index)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(index);
        return answer.Question.Kind == WhyKind.NotMade ? NotMade(answer, index) : Changed(answer, index);
    }

    private static string NotMade(WhyAnswer answer, PlanIndex index)
    {
        if (!answer.Reasons.IsEmpty)
        {
            var style = new LengthStyle { Unit = index.Plan.Request.Shop.Unit, Denominator = index.Plan.Request.Shop.Denominator };
            var reasons = string.Join("; or ", answer.Reasons.Select(r => ReasonText.Write(r, style, key => index.PartTitle(answer.Question.Gift, key))));
            return $"Even with the whole pile to itself it cannot be made. Missing: {reasons}.";
        }

        if (answer.InPlaceOf.IsEmpty)
        {
            return answer.IsProven
                ? "The whole pile would give it, but no single gift leaves enough when it is left out: it would cost two or more."
                : "The time was up before it was clear what it would cost. Ask again with more time.";
        }

        var mine = Priority(index, answer.Question.Gift);
        var others = answer.InPlaceOf.Select(g => $"{g} ({Compare(mine, Priority(index, g))})");
        return $"There is wood for it in place of {List(others, "or")}. {(answer.IsProven ? "" : "Not all were tried. ")}Give it a higher priority, or leave one of them out.";
    }

    private static string Changed(WhyAnswer answer, PlanIndex index)
    {
        var without = answer.Question.Kind switch
        {
            WhyKind.ThisOffcut => $"Without {answer.Question.Offcut}",
            WhyKind.Resawing when answer.Layers > 1 => "Without resawing",
            WhyKind.Resawing => "Resawn",
            WhyKind.GlueUps when answer.GlueUps > 1 => $"With fewer than {answer.GlueUps} glue-ups",
            _ => "With more than one glue-up",
        };
        if (!answer.CanBeOtherwise)
        {
            return $"{without}{(answer.IsProven ? "" : ", in the time there was, no way was found:")} {answer.Question.Gift} could not be made from what the others leave.";
        }

        var costs = answer.Costs.Select(c => Cost(c, index.Plan.Request.Shop.Unit)).ToArray();
        return costs.Length == 0
            ? $"{without} it would be just as good: choose as you like."
            : IsBetter(answer.Costs[0])
                ? $"{without} it would be better: {List(costs, "and")}. Plan again, with more time."
                : $"{without}: {List(costs, "and")}. All other gifts stay as they are.{(answer.IsProven ? "" : " More time might find it cheaper.")}";
    }

    private static bool IsBetter(LevelCost first) =>
        first.Otherwise > first.Now == (first.Kind is LevelKind.GiftsMade or LevelKind.Looks or LevelKind.StripsAsBefore);

    private static string Cost(LevelCost cost, LengthUnit unit)
    {
        var change = cost.Otherwise - cost.Now;
        var size = Math.Abs(change);
        var more = change > 0 ? "more" : "less";
        return cost.Kind switch
        {
            LevelKind.GiftsMade => change < 0 ? "gifts of more weight would go" : "gifts of more weight would come",
            LevelKind.Looks => $"{size} {(size == 1 ? "point" : "points")} of looks {more}",
            LevelKind.WoodUsed => $"{Wood(size, unit)} of wood {more}",
            LevelKind.ClampLoads => $"{size} clamp {(size == 1 ? "load" : "loads")} {(change > 0 ? "more" : "fewer")}",
            _ => $"{size} {(size == 1 ? "strip" : "strips")} that stay as they were {(change > 0 ? "more" : "fewer")}",
        };
    }

    private static string Wood(long cubicMillimetres, LengthUnit unit) => unit == LengthUnit.Inch
        ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{cubicMillimetres / CubicMillimetresPerCubicInch:0.0} in³")
        : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{cubicMillimetres / 1000.0:0} cm³");

    private static int Priority(PlanIndex index, string gift) => index.Gift(gift)?.Priority ?? 0;

    // Priority 1 comes first.
    private static string Compare(int mine, int theirs) => theirs < mine ? "more important" : theirs == mine ? "as important" : "less important";

    private static string List(IEnumerable<string> items, string last)
    {
        var all = items.ToArray();
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} {last} {all[^1]}";
    }
}
