using System.Text;

namespace Scrapwright.ICalendar.Tests;

/// <summary>An iCalendar file read by the rules of RFC 5545 alone, without the library that wrote it.</summary>
internal sealed class IcsText
{
    private readonly string text;

    internal IcsText(string text) => this.text = text;

    /// <summary>The lines as they stand in the file, section 3.1: each ends in CR LF.</summary>
    internal IReadOnlyList<string> Lines
    {
        get
        {
            Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
            var lines = text[..^2].Split("\r\n");
            Assert.All(lines, line => Assert.DoesNotContain('\r', line));
            Assert.All(lines, line => Assert.DoesNotContain('\n', line));
            return lines;
        }
    }

    /// <summary>The content lines, section 3.1: a line that begins with a space or a tab goes on with the one before.</summary>
    internal IReadOnlyList<string> ContentLines
    {
        get
        {
            var whole = new List<string>();
            foreach (var line in Lines)
            {
                if (line[0] is ' ' or '\t') whole[^1] += line[1..];
                else whole.Add(line);
            }

            return whole;
        }
    }

    /// <summary>The content lines of every component of one kind, without those of components inside it.</summary>
    internal IReadOnlyList<IReadOnlyList<string>> Components(string kind)
    {
        var found = new List<IReadOnlyList<string>>();
        var open = new Stack<(string Kind, List<string> Lines)>();
        foreach (var line in ContentLines)
        {
            if (line.StartsWith("BEGIN:", StringComparison.Ordinal)) open.Push((line["BEGIN:".Length..], []));
            else if (line.StartsWith("END:", StringComparison.Ordinal))
            {
                var (name, lines) = open.Pop();
                Assert.Equal(name, line["END:".Length..]);
                if (name == kind) found.Add(lines);
            }
            else open.Peek().Lines.Add(line);
        }

        Assert.Empty(open);
        return found;
    }

    /// <summary>The value of a property that a component has just once, section 3.1.</summary>
    internal static string Value(IReadOnlyList<string> component, string property) => Parts(component, property).Value;

    /// <summary>What stands between a property's name and its value, such as a TZID.</summary>
    internal static string Parameters(IReadOnlyList<string> component, string property) => Parts(component, property).Parameters;

    /// <summary>A text as it was before it was escaped, section 3.3.11.</summary>
    internal static string Plain(string value)
    {
        var plain = new StringBuilder();
        for (var i = 0; i < value.Length; i++)
        {
            Assert.False(value[i] is ',' or ';' && (i == 0 || value[i - 1] != '\\'), $"An unescaped {value[i]} at {i} in {value}");
            if (value[i] != '\\')
            {
                plain.Append(value[i]);
                continue;
            }

            i++;
            Assert.Contains(value[i], "\\;,nN");
            plain.Append(value[i] is 'n' or 'N' ? '\n' : value[i]);
        }

        return plain.ToString();
    }

    private static (string Parameters, string Value) Parts(IReadOnlyList<string> component, string property)
    {
        var line = Assert.Single(component, l => l.StartsWith(property + ":", StringComparison.Ordinal) || l.StartsWith(property + ";", StringComparison.Ordinal));
        var colon = line.IndexOf(':', StringComparison.Ordinal);
        return (line[property.Length..colon], line[(colon + 1)..]);
    }
}
