using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>Reads one row of <c>jigs.csv</c>.</summary>
internal sealed class JigCells(TableRow row, bool decimalCommas, ProblemList problems)
{
    /// <summary>The jig; null when a cell cannot be read.</summary>
    internal Jig? Read()
    {
        var before = problems.Count;
        var key = row["jig"].ToLowerInvariant();
        var known = JigTable.All.FirstOrDefault(j => j.Key == key);
        var jig = new Jig
        {
            Key = key,
            Name = row["name"].Length > 0 ? row["name"] : known?.Name ?? key.Replace('-', ' '),
            Operations = Operations(known?.Operations ?? []),
            SetUpMinutes = Whole("set-up-minutes", known?.SetUpMinutes ?? 0, FileMessages.WholeMinutes),
            EachSeconds = Whole("each-seconds", known?.EachSeconds ?? 0, "whole seconds, such as 15"),
            MakeMinutes = Whole("make-minutes", known?.MakeMinutes ?? 0, FileMessages.WholeMinutes),
            Material = Amount(known?.Material ?? 0),
            OnlySmall = IsSo("small", known?.OnlySmall ?? false),
            IsOwned = IsSo("have", known?.IsOwned ?? false),
            Note = row["note"],
        };
        if (problems.Count > before) return null;
        foreach (var problem in JigRules.Check(jig)) row.Refuse(ColumnOf(problem.Path), problem.Found, problem.Expected, problems);
        return jig;
    }

    private ImmutableArray<Operation> Operations(ImmutableArray<Operation> usual)
    {
        if (row["operations"].Length == 0) return usual;
        var operations = ImmutableArray.CreateBuilder<Operation>();
        foreach (var name in row["operations"].Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (OperationNames.Find(name) is { } operation) operations.Add(operation);
            else row.Refuse("operations", name, FileMessages.AKeyOf("operations with semicolons between them", OperationNames.All, name), problems);
        }

        return operations.ToImmutable();
    }

    private int Whole(string column, int usual, string expected)
    {
        if (row[column].Length == 0) return usual;
        if (int.TryParse(row[column], NumberStyles.None, CultureInfo.InvariantCulture, out var number)) return number;
        row.Refuse(column, row[column], expected, problems);
        return usual;
    }

    private decimal Amount(decimal usual)
    {
        if (row["material"].Length == 0) return usual;
        if (Amounts.Find(row["material"], decimalCommas) is { } amount) return amount;
        row.Refuse("material", row["material"], FileMessages.AnAmount, problems);
        return usual;
    }

    private bool IsSo(string column, bool usual)
    {
        switch (row[column].ToLowerInvariant())
        {
            case "yes":
                return true;
            case "no":
                return false;
            case "":
                return usual;
            default:
                row.Refuse(column, row[column], FileMessages.YesOrNo, problems);
                return usual;
        }
    }

    private static string ColumnOf(string path) => path switch
    {
        "key" => "jig",
        "setUpMinutes" => "set-up-minutes",
        "eachSeconds" => "each-seconds",
        "makeMinutes" => "make-minutes",
        _ => path,
    };
}
