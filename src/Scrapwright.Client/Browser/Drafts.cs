namespace Scrapwright.Client.Browser;

/// <summary>Text that was typed but not yet saved, kept in the browser so that a lost connection or a closed page loses nothing.</summary>
public sealed class Drafts(BrowserDoor browser)
{
    /// <summary>Draft of the pile's entry line.</summary>
    public const string EntryLine = "draft.entry-line";

    /// <summary>Draft of the paste list.</summary>
    public const string PasteLines = "draft.paste-lines";

    /// <summary>Ticked steps of a plan, by the plan's fingerprint.</summary>
    public static string Ticks(string fingerprint) => "ticks." + fingerprint;

    /// <summary>The draft under a key; empty when there is none.</summary>
    public async Task<string> ReadAsync(string key) => await browser.ReadAsync(key) ?? "";

    /// <summary>Keeps a draft; an empty one is forgotten.</summary>
    public async Task KeepAsync(string key, string text) => await browser.WriteAsync(key, text.Length == 0 ? null : text);
}
