using System.Collections.Immutable;

namespace Scrapwright.Core.Finishing;

/// <summary>The steps of a finish, coat by coat, with the minutes a calendar needs.</summary>
/// <remarks>Flooding, soaking for a quarter of an hour, wiping dry: common practice, no source. The label of the tin comes first.</remarks>
public static class FinishSteps
{
    /// <summary>All steps in order. Between coats and after the last they wait for the longer figure of the finish's band.</summary>
    public static ImmutableArray<FinishStep> For(Finish finish)
    {
        ArgumentNullException.ThrowIfNull(finish);
        var steps = ImmutableArray.CreateBuilder<FinishStep>();
        for (var coat = 1; coat <= finish.Coats; coat++) steps.AddRange(Coat(finish, coat));
        // What was wiped is buffed once it is dry; a brushed film is left alone.
        if (finish.Method != FinishMethod.Brush) steps.Add(new(0, "Buff with a clean dry cloth.", 3, 0));
        return steps.ToImmutable();
    }

    private static IEnumerable<FinishStep> Coat(Finish finish, int coat)
    {
        var dry = coat < finish.Coats ? finish.RecoatMinutes.Most : finish.HandleHours.Most * 60;
        switch (finish.Method)
        {
            case FinishMethod.Wipe:
                yield return new(coat, "Flood it and keep it wet.", 5, 15);
                yield return new(coat, "Wet dry spots again.", 2, 10);
                yield return new(coat, "Wipe it all off, with the grain.", 5, dry);
                break;
            case FinishMethod.Rub:
                yield return new(coat, "Rub in plenty, ends twice.", 4, 20);
                yield return new(coat, "Wipe off what stands.", 3, dry);
                break;
            case FinishMethod.Brush:
                if (coat > 1) yield return new(coat, "Sand lightly with the last grit, dust off.", 4, 0);
                yield return new(coat, "Brush a thin coat with the grain.", 6, dry);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(finish), finish.Method, "Wipe, Brush or Rub.");
        }
    }

    /// <summary>Minutes with a hand on it, all coats. [min]</summary>
    public static int HandsOnMinutes(Finish finish) => For(finish).Sum(s => s.HandsOnMinutes);

    /// <summary>Minutes of waiting, all coats, until it may be handled. [min]</summary>
    public static int WaitMinutes(Finish finish) => For(finish).Sum(s => s.WaitMinutes);
}
