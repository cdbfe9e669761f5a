using Scrapwright.Client.Numbers;
using Scrapwright.Core.Plans;

namespace Scrapwright.Client.Plans;

/// <summary>Why a gift is not made, in words.</summary>
public static class ReasonWords
{
    /// <summary>One reason as a sentence.</summary>
    /// <param name="reason">The reason.</param>
    /// <param name="partTitle">What a part is called.</param>
    /// <param name="ruler">How to show sizes.</param>
    public static string Of(Reason reason, Func<string, string> partTitle, Ruler ruler) => reason switch
    {
        Reason.MissingStrips m => $"{partTitle(m.Part)}: {(m.Strips == 1 ? "one more strip" : $"{m.Strips} more strips")} of {Words.Of(m.Tone)}wood ≥ {ruler.Text(m.Width)} wide, ≥ {ruler.Text(m.Length)} long, ≥ {ruler.Text(m.Thickness)} thick.",
        Reason.MissingBoard m => $"Run {m.Run}: a board ≥ {ruler.Text(m.Width)} wide, ≥ {ruler.Text(m.Length)} long, ≥ {ruler.Text(m.Thickness)} thick.",
        Reason.WrongOption w => $"{w.Option}: found “{w.Found}”, expected {w.Expected}.",
        Reason.BeyondShop b => $"{partTitle(b.Part)}: {b.Limit} is {ruler.Text(b.Allowed)}, needed {ruler.Text(b.Needed)}.",
        Reason.OutOfTime => "The search ended before it could tell. Give it more seconds.",
        _ => reason.ToString() ?? "",
    };
}
