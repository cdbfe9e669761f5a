namespace Scrapwright.Core.Plans.Ideas;

/// <summary>What is wrong with a question for ideas.</summary>
public static class IdeasFault
{
    private const int MostNamed = 12;

    /// <summary>Found and expected in one line; null when the workshop can be asked.</summary>
    /// <param name="request">The workshop.</param>
    /// <param name="question">The question.</param>
    public static string? Of(PlanRequest request, IdeasQuestion question)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(question);
        if (!(question.Seconds > 0 && question.Seconds <= IdeasQuestion.MostSeconds))
        {
            return $"Found {question.Seconds} seconds, expected a number above 0 and at most {IdeasQuestion.MostSeconds}.";
        }

        var labels = request.Pile.SelectMany(o => o.Pieces()).Select(o => o.Label).ToArray();
        if (labels.Length == 0)
        {
            return "Found an empty pile, expected at least one offcut.";
        }

        return question.Kind != IdeasKind.Offcut || labels.Contains(question.Offcut, StringComparer.Ordinal)
            ? null
            : $"Found offcut '{question.Offcut}', expected one of the pile: {string.Join(", ", labels.Take(MostNamed))}{(labels.Length > MostNamed ? ", …" : "")}.";
    }
}
