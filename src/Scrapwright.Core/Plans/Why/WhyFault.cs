namespace Scrapwright.Core.Plans.Why;

/// <summary>What is wrong with a question.</summary>
public static class WhyFault
{
    /// <summary>Found and expected in one line; null when the plan can be asked.</summary>
    public static string? Of(Plan plan, WhyQuestion question)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(question);
        if (question.Kind == WhyKind.NotMade)
        {
            return plan.Unmade.Any(u => u.Gift == question.Gift) ? null : $"Found gift '{question.Gift}', expected one that is not made{Among(plan.Unmade.Select(u => u.Gift))}.";
        }

        if (plan.Made.All(m => m.Gift != question.Gift))
        {
            return $"Found gift '{question.Gift}', expected one that is made{Among(plan.Made.Select(m => m.Gift))}.";
        }

        var parts = plan.GlueUps.SelectMany(g => g.PartsOf(question.Gift)).Distinct().ToArray();
        if (!parts.Contains(question.Part))
        {
            return $"Found part '{question.Part}', expected a part of {question.Gift} that is glued up{Among(parts)}.";
        }

        var offcuts = plan.GlueUps.Where(g => g.IsFor(question.Gift, question.Part)).SelectMany(g => g.Strips).Select(s => s.Offcut).Distinct().ToArray();
        return question.Kind != WhyKind.ThisOffcut || offcuts.Contains(question.Offcut)
            ? null
            : $"Found offcut '{question.Offcut}', expected one of {question.Gift} {question.Part}{Among(offcuts)}.";
    }

    private static string Among(IEnumerable<string> labels)
    {
        var all = labels.ToArray();
        return all.Length == 0 ? "; there is none" : $": {string.Join(", ", all)}";
    }
}
