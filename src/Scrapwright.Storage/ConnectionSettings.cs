using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Scrapwright.Storage;

/// <summary>Settings that SQLite keeps by connection, not in the file.</summary>
internal sealed class ConnectionSettings(int busyTimeoutMilliseconds) : DbConnectionInterceptor
{
    // synchronous = NORMAL is safe with WAL: a power cut may lose the last change, never the file.
    private readonly string sql = $"PRAGMA busy_timeout = {busyTimeoutMilliseconds}; PRAGMA synchronous = NORMAL;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
