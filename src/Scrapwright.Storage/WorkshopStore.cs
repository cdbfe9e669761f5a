using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Scrapwright.Storage;

/// <summary>The workshop on disk. Safe to use from several threads and programs at once; every change is all or nothing.</summary>
public sealed partial class WorkshopStore
{
    private readonly DbContextOptions<WorkshopContext> options;
    private readonly TimeProvider clock;

    private WorkshopStore(string folder, DbContextOptions<WorkshopContext> options, TimeProvider clock)
    {
        Folder = folder;
        this.options = options;
        this.clock = clock;
    }

    /// <summary>The folder it is kept in, as a full path.</summary>
    public string Folder { get; }

    /// <summary>Opens the workshop in a folder; makes folder and database when there are none.</summary>
    /// <param name="folder">The folder; see <see cref="WorkshopFolder.Default"/>.</param>
    /// <param name="clock">Tells when plans were found; the system's by default.</param>
    /// <param name="cancellationToken">Ends the attempt.</param>
    /// <exception cref="WorkshopUnreadableException">The folder or file cannot be used; the message is for the maker.</exception>
    public static async Task<WorkshopStore> OpenAsync(string folder, TimeProvider? clock = null, CancellationToken cancellationToken = default)
    {
        var full = Path.GetFullPath(folder);
        return new(full, await WorkshopDatabase.OpenAsync(full, cancellationToken), clock ?? TimeProvider.System);
    }

    private async Task<T> ReadAsync<T>(Func<WorkshopContext, Task<T>> read, CancellationToken cancellationToken)
    {
        try
        {
            await using var context = new WorkshopContext(options);
            context.ChangeTracker.QueryTrackingBehavior = QueryTrackingBehavior.NoTracking;

            // One transaction, so that all its queries see the same moment.
            await context.Database.OpenConnectionAsync(cancellationToken);
            var connection = (SqliteConnection)context.Database.GetDbConnection();
            await using var transaction = connection.BeginTransaction(deferred: true);
            await context.Database.UseTransactionAsync(transaction, cancellationToken);
            return await read(context);
        }
        catch (SqliteException e)
        {
            throw new WorkshopUnreadableException(WorkshopDatabase.Explain(WorkshopFolder.DatabasePath(Folder), e), e);
        }
    }

    /// <summary>Runs a change in a transaction that holds the write lock from its beginning, so that what it read is still true when it writes. Kept only when it says so.</summary>
    private async Task<T> WriteAsync<T>(Func<WorkshopContext, Task<(T Outcome, bool Keep)>> write, CancellationToken cancellationToken)
    {
        try
        {
            await using var context = new WorkshopContext(options);
            await using var transaction = await context.Database.BeginTransactionAsync(cancellationToken);
            var (outcome, keep) = await write(context);
            if (keep) await transaction.CommitAsync(cancellationToken);
            return outcome;
        }
        catch (SqliteException e)
        {
            throw new WorkshopUnreadableException(WorkshopDatabase.Explain(WorkshopFolder.DatabasePath(Folder), e), e);
        }
        catch (DbUpdateException e) when (e.InnerException is SqliteException inner)
        {
            throw new WorkshopUnreadableException(WorkshopDatabase.Explain(WorkshopFolder.DatabasePath(Folder), inner), e);
        }
    }
}
