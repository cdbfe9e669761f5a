namespace Scrapwright.Web.Planning;

/// <summary>Questions of one kind that are being answered, so that all of them can be ended early with what is known.</summary>
internal sealed class OpenQuestions
{
    private readonly Lock gate = new();
    private readonly HashSet<CancellationTokenSource> open = [];

    /// <summary>Answers one; its token is cancelled when the asker goes away or the questions are ended.</summary>
    internal async Task<T> AnswerAsync<T>(Func<CancellationToken, Task<T>> answer, CancellationToken asker)
    {
        using var source = CancellationTokenSource.CreateLinkedTokenSource(asker);
        lock (gate)
        {
            open.Add(source);
        }

        try
        {
            return await answer(source.Token);
        }
        finally
        {
            lock (gate)
            {
                open.Remove(source);
            }
        }
    }

    /// <summary>Ends all that are open.</summary>
    internal void End()
    {
        lock (gate)
        {
            foreach (var source in open)
            {
                source.Cancel();
            }
        }
    }
}
