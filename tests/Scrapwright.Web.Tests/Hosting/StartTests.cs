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

    [Theory]
    [InlineData("http://localhost:99999")]
    [InlineData("5210")]
    [InlineData("http://localhost:5210;ftp://localhost")]
    public async Task An_address_that_is_none_ends_the_start(string urls)
    {
        var fault = await Assert.ThrowsAsync<StartException>(() => WebApp.BuildAsync(["--data", "unused", "--urls", urls]));

        Assert.Contains("--urls", fault.Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists("unused"));
    }

    [Fact]
    public async Task A_port_in_use_ends_the_program_with_code_2()
    {
        await using var app = await RunningApp.StartAsync();

        Assert.Equal(2, await WebProgram.RunAsync(["--data", app.Folder, "--urls", app.Http.BaseAddress!.ToString()]));
    }

    [Fact]
    public async Task An_empty_folder_name_ends_the_start()
    {
        await Assert.ThrowsAsync<StartException>(() => WebApp.BuildAsync(["--data", " "]));
    }
}
