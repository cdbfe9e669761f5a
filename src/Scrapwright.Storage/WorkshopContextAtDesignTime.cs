using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Scrapwright.Storage;

/// <summary>What <c>dotnet ef migrations add</c> uses; no database is touched.</summary>
internal sealed class WorkshopContextAtDesignTime : IDesignTimeDbContextFactory<WorkshopContext>
{
    public WorkshopContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<WorkshopContext>().UseSqlite("Data Source=:memory:").Options);
}
