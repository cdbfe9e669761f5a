using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Scrapwright.Client.Api;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Web.Planning;

namespace Scrapwright.Web.Tests;

/// <summary>The whole application on a free port with a workshop of its own, for one test.</summary>
internal sealed class RunningApp : IAsyncDisposable
{
    private readonly WebApplication app;
    private readonly bool ownsFolder;

    private RunningApp(WebApplication app, string folder, bool ownsFolder)
    {
        this.app = app;
        this.ownsFolder = ownsFolder;
        Folder = folder;
        Http = new HttpClient { BaseAddress = new Uri(app.Urls.Single()) };
    }

    internal string Folder { get; }

    internal HttpClient Http { get; }

    internal static async Task<RunningApp> StartAsync(MakePlan? makePlan = null, string? folder = null)
    {
        var data = folder ?? Directory.CreateTempSubdirectory("scrapwright-").FullName;
        var app = await WebApp.BuildAsync(
            ["--data", data, "--urls", "http://127.0.0.1:0"],
            services =>
            {
                if (makePlan is not null) services.AddSingleton(makePlan);
            });
        await app.StartAsync();
        return new RunningApp(app, data, folder is null);
    }

    public async ValueTask DisposeAsync()
    {
        Http.Dispose();
        await app.DisposeAsync();
        if (!ownsFolder) return;
        SqliteConnection.ClearAllPools();
        Directory.Delete(Folder, recursive: true);
    }

    internal async Task<T> GetAsync<T>(string route) => await ReadAsync<T>(await Http.GetAsync(route));

    internal Task<HttpResponseMessage> PostAsync<T>(string route, T value) => Http.PostAsync(route, Json(value));

    internal Task<HttpResponseMessage> PutAsync<T>(string route, T value) => Http.PutAsync(route, Json(value));

    internal static StringContent Json<T>(T value) => Text(JsonSerializer.Serialize(value, PlanJson.Options));

    internal static StringContent Text(string json) => new(json, Encoding.UTF8, new MediaTypeHeaderValue("application/json"));

    /// <summary>The body, read as strictly as the server reads ours.</summary>
    internal static async Task<T> ReadAsync<T>(HttpResponseMessage response)
    {
        var text = await response.Content.ReadAsStringAsync();
        return JsonSerializer.Deserialize<T>(text, PlanJson.Options) ?? throw new JsonException($"Found null in {text}");
    }

    /// <summary>The refusal, which must be one in form, status and manners.</summary>
    internal static async Task<ApiProblem> ReadProblemAsync(HttpResponseMessage response, int status)
    {
        var text = await response.Content.ReadAsStringAsync();
        Assert.Equal(status, (int)response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
        Assert.DoesNotContain("   at ", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", text, StringComparison.Ordinal);
        var problem = JsonSerializer.Deserialize<ApiProblem>(text, PlanJson.Options)!;
        Assert.Equal(status, problem.Status);
        return problem;
    }

    internal static OffcutEntry Entry(string label, string species = "black-walnut") => new(
        new Offcut { Label = label, Species = species, Length = Length.FromInches(115, 8), Width = Length.FromInches(17, 8), Thickness = Length.FromInches(7, 8) },
        LengthUnit.Inch);
}
