using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Scrapwright.Storage.Tests;

public sealed class DatabaseFileTests : IDisposable
{
    private readonly TemporaryWorkshop workshop = new();

    [Fact]
    public async Task A_fresh_folder_gets_a_database_in_write_ahead_mode()
    {
        var folder = Path.Combine(workshop.Folder, "deep", "er");

        var store = await WorkshopStore.OpenAsync(folder);

        Assert.Empty(await store.ListOffcutsAsync());
        using var connection = new SqliteConnection($"Data Source={WorkshopFolder.DatabasePath(folder)};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA journal_mode";
        Assert.Equal("wal", command.ExecuteScalar());
    }

    [Fact]
    public void The_migrations_make_what_the_model_says()
    {
        using var context = new WorkshopContextAtDesignTime().CreateDbContext([]);

        Assert.False(context.Database.HasPendingModelChanges());
    }

    [Fact]
    public async Task Rubbish_in_place_of_the_database_is_told_without_touching_it()
    {
        var rubbish = new byte[10_000];
        new Random(7).NextBytes(rubbish);
        File.WriteAllBytes(workshop.DatabasePath, rubbish);

        var fault = await Assert.ThrowsAsync<WorkshopUnreadableException>(workshop.OpenAsync);

        Assert.Contains(workshop.DatabasePath, fault.Message, StringComparison.Ordinal);
        Assert.Contains("damaged or no database", fault.Message, StringComparison.Ordinal);
        Assert.Equal(rubbish, File.ReadAllBytes(workshop.DatabasePath));
    }

    [Fact]
    public async Task A_database_of_another_program_is_told_without_touching_it()
    {
        workshop.Scalar("CREATE TABLE recipes (name TEXT)");
        SqliteConnection.ClearAllPools();

        var fault = await Assert.ThrowsAsync<WorkshopUnreadableException>(workshop.OpenAsync);

        Assert.Contains("another program", fault.Message, StringComparison.Ordinal);
        Assert.Equal(1L, workshop.Scalar("SELECT COUNT(*) FROM sqlite_master"));
    }

    [Fact]
    public async Task A_database_of_a_newer_version_is_told()
    {
        await workshop.OpenAsync();
        workshop.Scalar("INSERT INTO __EFMigrationsHistory VALUES ('99990101000000_Later', '99.0')");

        var fault = await Assert.ThrowsAsync<WorkshopUnreadableException>(workshop.OpenAsync);

        Assert.Contains("newer Scrapwright", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_database_cut_off_in_the_middle_is_told()
    {
        var store = await workshop.OpenAsync();
        await store.AddOffcutsAsync([.. Enumerable.Range(0, 500).Select(_ => TemporaryWorkshop.Offcut(""))]);
        workshop.Scalar("PRAGMA wal_checkpoint(TRUNCATE)");
        SqliteConnection.ClearAllPools();
        using (var file = File.OpenWrite(workshop.DatabasePath)) file.SetLength(file.Length / 2);

        var fault = await Assert.ThrowsAsync<WorkshopUnreadableException>(workshop.OpenAsync);

        Assert.Contains("damaged", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_in_place_of_the_folder_is_told()
    {
        var path = Path.Combine(workshop.Folder, "file");
        File.WriteAllText(path, "");

        var fault = await Assert.ThrowsAsync<WorkshopUnreadableException>(() => WorkshopStore.OpenAsync(path));

        Assert.Contains("--data", fault.Message, StringComparison.Ordinal);
    }

    public void Dispose() => workshop.Dispose();
}
