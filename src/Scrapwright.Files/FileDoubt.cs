namespace Scrapwright.Files;

/// <summary>Something in a file that was read but is so unlikely that the maker is asked back.</summary>
/// <param name="File">Name of the file.</param>
/// <param name="Line">Counted from 1.</param>
/// <param name="Question">The question for a person.</param>
public sealed record FileDoubt(string File, int Line, string Question)
{
    /// <summary>The question with its place.</summary>
    public override string ToString() => $"{File}, line {Line}: {Question}";
}
