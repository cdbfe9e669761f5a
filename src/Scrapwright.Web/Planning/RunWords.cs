using Scrapwright.Client.Api;

namespace Scrapwright.Web.Planning;

/// <summary>The words for the states of a run in the store.</summary>
internal static class RunWords
{
    internal const string Running = "running";
    internal const string Done = "done";
    internal const string Cancelled = "cancelled";
    internal const string Failed = "failed";

    internal static RunState StateOf(string word) => word switch
    {
        Running => RunState.Running,
        Done => RunState.Done,
        Cancelled => RunState.Cancelled,
        _ => RunState.Failed,
    };
}
