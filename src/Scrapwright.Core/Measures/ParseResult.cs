using System.Diagnostics.CodeAnalysis;

namespace Scrapwright.Core.Measures;

/// <summary>What a text means, or why it was not understood. <c>default</c> is a failure without particulars.</summary>
/// <typeparam name="T">What the text stands for.</typeparam>
public readonly record struct ParseResult<T>
    where T : notnull
{
    private readonly T? value;
    private readonly ParseError? error;

    private ParseResult(bool isOk, T? value, ParseError? error)
    {
        IsOk = isOk;
        this.value = value;
        this.error = error;
    }

    /// <summary>Whether the text was understood.</summary>
    public bool IsOk { get; }

    /// <summary>What the text means.</summary>
    /// <exception cref="InvalidOperationException">The text was not understood.</exception>
    public T Value => IsOk ? value! : throw new InvalidOperationException("There is no value: " + Error.Message);

    /// <summary>Why the text was not understood.</summary>
    /// <exception cref="InvalidOperationException">The text was understood.</exception>
    public ParseError Error => IsOk
        ? throw new InvalidOperationException("There is no error: the text was understood.")
        : error ?? new ParseError(0, "", Messages.SomeText);

    /// <summary>Takes the value out if there is one.</summary>
    public bool TryGetValue([MaybeNullWhen(false)] out T result)
    {
        result = value;
        return IsOk;
    }

    /// <summary>The same failure, or the value changed by <paramref name="change"/>.</summary>
    public ParseResult<TOther> Then<TOther>(Func<T, ParseResult<TOther>> change)
        where TOther : notnull
    {
        ArgumentNullException.ThrowIfNull(change);
        return IsOk ? change(value!) : ParseResult.Failed<TOther>(Error);
    }

    internal static ParseResult<T> MakeOk(T value) => new(true, value, null);

    internal static ParseResult<T> MakeFailed(ParseError error) => new(false, default, error);
}
