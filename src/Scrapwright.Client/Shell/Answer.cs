using Scrapwright.Client.Api;

namespace Scrapwright.Client.Shell;

/// <summary>What the server said: what was asked for, a refusal with reasons, or nothing because it cannot be reached.</summary>
/// <typeparam name="T">What was asked for.</typeparam>
public abstract record Answer<T>
{
    private Answer()
    {
    }

    /// <summary>It was done.</summary>
    /// <param name="Value">What came back.</param>
    public sealed record Given(T Value) : Answer<T>;

    /// <summary>The server says no.</summary>
    /// <param name="Why">What is wrong.</param>
    public sealed record Refused(ApiProblem Why) : Answer<T>;

    /// <summary>No answer: the connection or the server is gone.</summary>
    public sealed record Unreachable : Answer<T>;

    /// <summary>Null when it was done, else what to tell the maker.</summary>
    public ApiProblem? Problem => this switch
    {
        Refused refused => refused.Why,
        Unreachable => new ApiProblem { Title = "The server does not answer.", Status = 0, Detail = "What you typed is kept. Try again when the connection is back." },
        _ => null,
    };
}
