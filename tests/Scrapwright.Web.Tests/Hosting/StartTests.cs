using Scrapwright.Storage;

namespace Scrapwright.Web.Tests.Hosting;

public sealed class StartTests
{
    [Fact]
    public async Task A_database_that_is_none_ends_the_start_with_words_for_the_maker()
    {
        var folder = Directory.CreateTempSubdirectory("scrapwright-");
        await File.WriteAllTextAsync(Path.Combine(folder.FullName, WorkshopFolder.DatabaseName), string.Concat(Enumerable.Repeat("not a database ", 500)));

        var fault = await Assert.ThrowsAsync<WorkshopUnreadableException>(() => WebApp.BuildAsync(["--data", folder.FullName]));

        Assert.Contains("Move it away", fault.Message, StringComparison.Ordinal);
        folder.Delete(recursive: true);
    }

    [Fact]
    public async Task An_empty_folder_name_ends_the_start()
    {
        await Assert.ThrowsAsync<StartException>(() => WebApp.BuildAsync(["--data", " "]));
    }
}
