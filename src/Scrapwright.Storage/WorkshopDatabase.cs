using System.Reflection;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Scrapwright.Storage;

/// <summary>The database file: made on first use, brought up to date when older, refused with a clear message when it is not ours.</summary>
internal static class WorkshopDatabase
{
    /// <summary>Mark in the file's header that it is ours: the letters Scrw.</summary>
    internal const int ApplicationId = 0x53637277;

    private const int BusyTimeoutMilliseconds = 10_000;

    /// <summary>Options for contexts on a database that can be used.</summary>
    /// <exception cref="WorkshopUnreadableException">The folder or file cannot be used.</exception>
    internal static async Task<DbContextOptions<WorkshopContext>> OpenAsync(string folder, CancellationToken cancellationToken)
    {
        var path = WorkshopFolder.DatabasePath(folder);
        try
        {
            Directory.CreateDirectory(folder);
            var options = Options(path);
            if (await NeedsMigrationAsync(path, cancellationToken)) await MigrateAsync(options, cancellationToken);
            return options;
        }
        catch (SqliteException e)
        {
            throw new WorkshopUnreadableException(Explain(path, e), e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new WorkshopUnreadableException($"The folder {folder} cannot be used: {e.Message} Choose another with --data.", e);
        }
    }

    /// <summary>What a fault of the database means for the maker.</summary>
    internal static string Explain(string path, SqliteException fault) => fault.SqliteErrorCode switch
    {
        SQLitePCL.raw.SQLITE_NOTADB or SQLitePCL.raw.SQLITE_CORRUPT =>
            $"{path} is damaged or no database. Move it away to begin afresh, or choose another folder with --data.",
        SQLitePCL.raw.SQLITE_BUSY or SQLitePCL.raw.SQLITE_LOCKED => $"{path} is in use by another program. Close it and try again.",
        SQLitePCL.raw.SQLITE_READONLY or SQLitePCL.raw.SQLITE_CANTOPEN or SQLitePCL.raw.SQLITE_PERM =>
            $"{path} cannot be opened for writing. Check its permissions, or choose another folder with --data.",
        SQLitePCL.raw.SQLITE_FULL => $"{path} cannot grow: the disk is full.",
        _ => $"{path} cannot be used: {fault.Message}",
    };

    private static DbContextOptions<WorkshopContext> Options(string path) =>
        new DbContextOptionsBuilder<WorkshopContext>()
            .UseSqlite(new SqliteConnectionStringBuilder { DataSource = path, DefaultTimeout = BusyTimeoutMilliseconds / 1000 }.ToString())
            .AddInterceptors(new ConnectionSettings(BusyTimeoutMilliseconds))
            .Options;

    // Read without EF Core's migration services: they take longer than the rest of the start, and nearly every start needs none.
    private static async Task<bool> NeedsMigrationAsync(string path, CancellationToken cancellationToken)
    {
        if (!File.Exists(path)) return true;
        await using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Mode = SqliteOpenMode.ReadWrite, Pooling = false }.ToString());
        await connection.OpenAsync(cancellationToken);
        var mark = Convert.ToInt64(await ScalarAsync(connection, "PRAGMA application_id", cancellationToken));
        if (mark == 0 && Convert.ToInt64(await ScalarAsync(connection, "SELECT COUNT(*) FROM sqlite_master", cancellationToken)) == 0) return true;
        if (mark != ApplicationId)
            throw new WorkshopUnreadableException($"{path} is a database of another program. Move it away, or choose another folder with --data.");
        if ((string?)await ScalarAsync(connection, "PRAGMA quick_check(1)", cancellationToken) is not "ok")
            throw new WorkshopUnreadableException($"{path} is damaged. Move it away to begin afresh, or choose another folder with --data.");

        var applied = (string?)await ScalarAsync(connection, "SELECT MAX(MigrationId) FROM __EFMigrationsHistory", cancellationToken) ?? "";
        return string.CompareOrdinal(applied, NewestMigration()) switch
        {
            0 => false,
            < 0 => true,
            _ => throw new WorkshopUnreadableException($"{path} was written by a newer Scrapwright. Use that one, or choose another folder with --data."),
        };
    }

    private static async Task MigrateAsync(DbContextOptions<WorkshopContext> options, CancellationToken cancellationToken)
    {
        await using var context = new WorkshopContext(options);

        // Readers and one writer at the same time; kept in the file. Not allowed inside the migration's transaction.
        await context.Database.ExecuteSqlRawAsync("PRAGMA journal_mode = WAL", cancellationToken);
        await context.Database.MigrateAsync(cancellationToken);
    }

    private static string NewestMigration() => typeof(WorkshopDatabase).Assembly.GetTypes()
        .Select(t => t.GetCustomAttribute<MigrationAttribute>()?.Id)
        .Max(StringComparer.Ordinal)!;

    private static async Task<object?> ScalarAsync(SqliteConnection connection, string sql, CancellationToken cancellationToken)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        return await command.ExecuteScalarAsync(cancellationToken);
    }
}
