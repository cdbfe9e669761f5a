using Microsoft.EntityFrameworkCore;
using Scrapwright.Storage.Tables;

namespace Scrapwright.Storage;

/// <summary>The tables. Labels are unique without regard to upper and lower case among rows that are not deleted.</summary>
internal sealed class WorkshopContext(DbContextOptions<WorkshopContext> options) : DbContext(options)
{
    public DbSet<OffcutRow> Offcuts => Set<OffcutRow>();

    public DbSet<GiftRow> Gifts => Set<GiftRow>();

    public DbSet<ShopRow> Shop => Set<ShopRow>();

    public DbSet<DesignRow> Designs => Set<DesignRow>();

    public DbSet<PlanRow> Plans => Set<PlanRow>();

    public DbSet<RunRow> Runs => Set<RunRow>();

    public DbSet<CalendarRow> Calendars => Set<CalendarRow>();

    public DbSet<TimeRow> Times => Set<TimeRow>();

    public DbSet<OccasionRow> Occasions => Set<OccasionRow>();

    public DbSet<GivenRow> Given => Set<GivenRow>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<OffcutRow>(row =>
        {
            row.ToTable("offcuts");
            row.Property(r => r.Unit).HasConversion<string>();
            row.Property(r => r.Faces).HasConversion<string>();
            row.Property(r => r.Rings).HasConversion<string>();
            row.Property(r => r.Label).UseCollation("NOCASE");
            row.HasIndex(r => r.Label).IsUnique().HasFilter("\"IsDeleted\" = 0");
        });
        modelBuilder.Entity<GiftRow>(row =>
        {
            row.ToTable("gifts");
            row.Property(r => r.Label).UseCollation("NOCASE");
            row.HasIndex(r => r.Label).IsUnique().HasFilter("\"IsDeleted\" = 0");
        });
        modelBuilder.Entity<ShopRow>(row =>
        {
            row.ToTable("shop");
            row.Property(r => r.Id).ValueGeneratedNever();
        });
        modelBuilder.Entity<DesignRow>(row =>
        {
            row.ToTable("designs");
            row.HasKey(r => r.Key);
            row.Property(r => r.Key).UseCollation("NOCASE");
        });
        modelBuilder.Entity<PlanRow>().ToTable("plans");
        modelBuilder.Entity<RunRow>().ToTable("runs");
        modelBuilder.Entity<CalendarRow>().ToTable("calendars");
        modelBuilder.Entity<OccasionRow>(row =>
        {
            row.ToTable("occasions");
            row.Property(r => r.Name).UseCollation("NOCASE");
            row.HasIndex(r => r.Name).IsUnique().HasFilter("\"IsDeleted\" = 0");
        });
        modelBuilder.Entity<GivenRow>().ToTable("given");
        modelBuilder.Entity<TimeRow>(row =>
        {
            row.ToTable("times");
            row.Property(r => r.Operation).HasConversion<string>();
        });
    }
}
