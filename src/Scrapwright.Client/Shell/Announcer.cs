namespace Scrapwright.Client.Shell;

/// <summary>Says things to people who listen to the screen instead of looking at it.</summary>
public sealed class Announcer
{
    /// <summary>Told what to say.</summary>
    public event Action<string>? Said;

    /// <summary>Says a sentence once what is being said has ended.</summary>
    public void Say(string sentence) => Said?.Invoke(sentence);
}
