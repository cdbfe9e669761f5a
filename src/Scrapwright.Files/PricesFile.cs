using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>Reads and writes <c>prices.csv</c>: what can be bought, for how much, and how soon it is here.</summary>
public static class PricesFile
{
    /// <summary>The file's name in a workshop folder.</summary>
    public const string Name = "prices.csv";

    /// <summary>The columns, in the order written; the first three must be there.</summary>
    public static ImmutableArray<string> Columns { get; } = ["kind", "name", "price", "days", "note"];

    /// <summary>Reads the file's bytes, UTF-8.</summary>
    /// <param name="bytes">The whole file.</param>
    public static FileOutcome<ImmutableArray<Price>> Parse(ReadOnlySpan<byte> bytes)
    {
        var problems = new ProblemList(Name);
        return Parse(FileText.Decode(bytes, problems), problems);
    }

    /// <summary>Reads the file's text.</summary>
    /// <param name="text">The whole file.</param>
    public static FileOutcome<ImmutableArray<Price>> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var problems = new ProblemList(Name);
        return Parse(FileText.Check(text, problems), problems);
    }

    /// <summary>The file's text, which is read back to the same prices.</summary>
    /// <param name="prices">The prices.</param>
    public static string Write(IEnumerable<Price> prices)
    {
        ArgumentNullException.ThrowIfNull(prices);
        return TableWriter.Write(Columns, prices.Select(price => new[]
        {
            price.Kind.ToString().ToLowerInvariant(), price.Name, Amounts.Write(price.Amount), price.Days.ToString(CultureInfo.InvariantCulture), price.Note,
        }));
    }

    private static FileOutcome<ImmutableArray<Price>> Parse(string? text, ProblemList problems)
    {
        var prices = ImmutableArray.CreateBuilder<Price>();
        if (text is not null && TableReader.Read(text, Columns, required: 3, problems) is { } table)
        {
            var lines = new Dictionary<(PriceKind, string), int>();
            foreach (var row in table.Rows)
            {
                if (ReadRow(row, table.HasDecimalCommas, problems) is not { } price) continue;
                prices.Add(price);
                var key = (price.Kind, price.Name.ToUpperInvariant());
                if (!lines.TryAdd(key, row.Line)) row.Refuse("name", price.Name, FileMessages.OnlyOnce(lines[key]), problems);
            }
        }

        return problems.Outcome(prices.ToImmutable);
    }

    private static Price? ReadRow(TableRow row, bool decimalCommas, ProblemList problems)
    {
        var before = problems.Count;
        string[] kinds = [.. Enum.GetNames<PriceKind>().Select(name => name.ToLowerInvariant())];
        var kind = Array.IndexOf(kinds, row["kind"].ToLowerInvariant());
        if (kind < 0) row.Refuse("kind", row["kind"], FileMessages.AKeyOf("what it is", kinds, row["kind"]), problems);
        var amount = Amounts.Find(row["price"], decimalCommas);
        if (amount is null) row.Refuse("price", row["price"], FileMessages.AnAmount, problems);
        var days = 0;
        if (row["days"].Length > 0 && !int.TryParse(row["days"], NumberStyles.None, CultureInfo.InvariantCulture, out days)) row.Refuse("days", row["days"], "whole days, such as 3", problems);
        if (problems.Count > before) return null;
        var price = new Price((PriceKind)kind, row["name"], amount!.Value, days) { Note = row["note"] };
        foreach (var problem in PriceRules.Check(price)) row.Refuse(problem.Path == "amount" ? "price" : problem.Path, problem.Found, problem.Expected, problems);
        return price;
    }
}
