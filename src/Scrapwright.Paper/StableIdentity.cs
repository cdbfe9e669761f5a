using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Scrapwright.Paper;

/// <summary>
/// Replaces what the PDF package draws by lot (font subset tags, document id, metadata ids) by values from the content, each as long as before, so that
/// the same sheets give the same bytes and the offsets in the file stay right.
/// </summary>
internal static partial class StableIdentity
{
    internal static byte[] Apply(byte[] pdf)
    {
        // Latin-1 maps every byte to one character and back.
        var text = Encoding.Latin1.GetString(pdf);
        var tags = new Dictionary<string, string>();
        text = SubsetTag().Replace(text, match => Tag(tags, match.Value));
        text = Identity().Replace(text, match => new string([.. match.Value.Select(c => Uri.IsHexDigit(c) ? '0' : c)]));
        var digest = Convert.ToHexString(SHA256.HashData(Encoding.Latin1.GetBytes(text)));
        text = Identity().Replace(text, match => Fill(match.Value, digest));
        return Encoding.Latin1.GetBytes(text);
    }

    private static string Tag(Dictionary<string, string> tags, string found)
    {
        if (!tags.TryGetValue(found, out var tag)) tags.Add(found, tag = "AAAAA" + (char)('A' + tags.Count));
        return tag;
    }

    private static string Fill(string text, string digest)
    {
        var next = 0;
        var hex = text.StartsWith('<') ? digest : digest.ToLowerInvariant();
        return new string([.. text.Select(c => c == '0' ? hex[next++ % hex.Length] : c)]);
    }

    [GeneratedRegex(@"(?<=/)[A-Z]{6}(?=\+Open#20Sans)")]
    private static partial Regex SubsetTag();

    [GeneratedRegex(@"(?<=/ID\[)<[0-9A-F]{32}><[0-9A-F]{32}>(?=\])|(?<=uuid:)[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")]
    private static partial Regex Identity();
}
