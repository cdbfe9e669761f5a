namespace Scrapwright.Core.Measures;

/// <summary>Makes <see cref="ParseResult{T}"/> values.</summary>
public static class ParseResult
{
    /// <summary>The text was understood.</summary>
    public static ParseResult<T> Ok<T>(T value)
        where T : notnull => ParseResult<T>.MakeOk(value);

    /// <summary>The text was not understood.</summary>
    public static ParseResult<T> Failed<T>(ParseError error)
        where T : notnull
    {
        ArgumentNullException.ThrowIfNull(error);
        return ParseResult<T>.MakeFailed(error);
    }

    /// <summary>The text was not understood at a position counted from 0.</summary>
    public static ParseResult<T> Failed<T>(int position, string found, string expected)
        where T : notnull => Failed<T>(new ParseError(position, found, expected));
}
