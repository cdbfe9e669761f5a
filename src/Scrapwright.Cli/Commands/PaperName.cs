using Spectre.Console;

namespace Scrapwright.Cli.Commands;

/// <summary>The option that chooses the paper.</summary>
internal static class PaperName
{
    internal const string Description = "letter or a4. Without it: letter where the shop measures in inches, a4 where in millimetres.";

    internal static ValidationResult Check(string? name) => name?.ToUpperInvariant() is null or "LETTER" or "A4"
        ? ValidationResult.Success()
        : ValidationResult.Error($"--paper: found “{name}”, expected letter or a4.");
}
