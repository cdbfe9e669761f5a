using Microsoft.Data.Sqlite;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Storage.Tests;

/// <summary>A fresh folder for one test, gone afterwards.</summary>
internal sealed class TemporaryWorkshop : IDisposable
{
    internal string Folder { get; } = Directory.CreateTempSubdirectory("scrapwright-").FullName;

    internal string DatabasePath => WorkshopFolder.DatabasePath(Folder);

    internal Task<WorkshopStore> OpenAsync() => WorkshopStore.OpenAsync(Folder);

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(Folder, recursive: true);
    }

    internal static NewOffcut Offcut(string label, string species = "black-walnut", int count = 1) => new(
        new Offcut
        {
            Label = label,
            Species = species,
            Length = Length.FromInches(115, 8),
            Width = Length.FromInches(17, 8),
            Thickness = Length.FromInches(7, 8),
            Count = count,
        },
        LengthUnit.Inch);

    internal static Gift Gift(string label) => new() { Label = label, Design = "striped-squares" };

    internal object? Scalar(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={DatabasePath};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }
}
