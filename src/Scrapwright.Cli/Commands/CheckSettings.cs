namespace Scrapwright.Cli.Commands;

/// <summary>What <c>scrapwright check</c> takes.</summary>
internal sealed class CheckSettings : FolderArgument;
