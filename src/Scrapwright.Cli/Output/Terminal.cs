using Spectre.Console;

namespace Scrapwright.Cli.Output;

/// <summary>Where a command writes: a terminal that can be drawn on, or a pipe or file that takes plain lines.</summary>
internal sealed class Terminal
{
    internal Terminal(TextWriter @out, TextWriter error, TextReader @in, IAnsiConsole console, bool isLive)
    {
        Out = @out;
        Error = error;
        In = @in;
        Console = console;
        IsLive = isLive;
    }

    /// <summary>Results.</summary>
    internal TextWriter Out { get; }

    /// <summary>What went wrong, and progress.</summary>
    internal TextWriter Error { get; }

    /// <summary>The standard input.</summary>
    internal TextReader In { get; }

    /// <summary>For what is drawn: help, and progress when <see cref="IsLive"/>.</summary>
    internal IAnsiConsole Console { get; }

    /// <summary>Whether lines can be drawn over.</summary>
    internal bool IsLive { get; }

    internal static Terminal OfThisProcess()
    {
        var redirected = System.Console.IsOutputRedirected;
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = redirected ? AnsiSupport.No : AnsiSupport.Detect,
            ColorSystem = redirected ? ColorSystemSupport.NoColors : ColorSystemSupport.Detect,
            Out = new AnsiConsoleOutput(System.Console.Out),
        });
        // A pipe has no width; help is laid out for a page.
        if (redirected) console.Profile.Width = 100;
        return new Terminal(System.Console.Out, System.Console.Error, System.Console.In, console, !redirected && console.Profile.Capabilities.Ansi);
    }
}
