namespace Scrapwright.Storage;

/// <summary>Where a workshop is kept: one folder with one database file in it.</summary>
public static class WorkshopFolder
{
    /// <summary>Name of the database file in the folder.</summary>
    public const string DatabaseName = "workshop.db";

    /// <summary>The folder used when none is chosen: <c>Scrapwright</c> in the user's own data directory.</summary>
    public static string Default { get; } = Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create),
        "Scrapwright");

    /// <summary>The database file in a folder.</summary>
    public static string DatabasePath(string folder) => Path.Combine(folder, DatabaseName);
}
