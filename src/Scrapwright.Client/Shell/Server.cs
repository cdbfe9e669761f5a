using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Scrapwright.Client.Api;
using Scrapwright.Core.Plans;

namespace Scrapwright.Client.Shell;

/// <summary>Asks the server and turns whatever happens into an <see cref="Answer{T}"/>; remembers whether the last call got through.</summary>
public sealed class Server(HttpClient http)
{
    /// <summary>Told when the server comes or goes.</summary>
    public event Action? ReachableChanged;

    /// <summary>False after a call that got no answer, until one does.</summary>
    public bool IsReachable { get; private set; } = true;

    /// <summary>GET.</summary>
    public Task<Answer<T>> GetAsync<T>(string address) => AskAsync<T>(HttpMethod.Get, address, null);

    /// <summary>POST with a JSON body, or without one when it is null.</summary>
    public Task<Answer<T>> PostAsync<T>(string address, object? body = null) => AskAsync<T>(HttpMethod.Post, address, Json(body));

    /// <summary>PUT with a JSON body.</summary>
    public Task<Answer<T>> PutAsync<T>(string address, object body) => AskAsync<T>(HttpMethod.Put, address, Json(body));

    /// <summary>DELETE.</summary>
    public Task<Answer<bool>> DeleteAsync(string address) => AskAsync<bool>(HttpMethod.Delete, address, null);

    /// <summary>POST of any content.</summary>
    public Task<Answer<T>> SendAsync<T>(string address, HttpContent content) => AskAsync<T>(HttpMethod.Post, address, content);

    /// <summary>POST without a body, to end a question early; said again until it is answered: the question itself may still be on its way.</summary>
    /// <param name="address">Where questions are ended.</param>
    /// <param name="isOpen">Whether it is still to be answered.</param>
    public async Task EndAsync(string address, Func<bool> isOpen)
    {
        ArgumentNullException.ThrowIfNull(isOpen);
        while (isOpen() && IsReachable)
        {
            await PostAsync<bool>(address);
            await Task.Delay(TimeSpan.FromSeconds(1));
        }
    }

    private static JsonContent? Json(object? body) =>
        body is null ? null : JsonContent.Create(body, body.GetType(), options: PlanJson.Options);

    private async Task<Answer<T>> AskAsync<T>(HttpMethod method, string address, HttpContent? content)
    {
        try
        {
            using var request = new HttpRequestMessage(method, address) { Content = content };
            using var response = await http.SendAsync(request);
            Reached(response.StatusCode is not (HttpStatusCode.BadGateway or HttpStatusCode.ServiceUnavailable or HttpStatusCode.GatewayTimeout));
            if (!IsReachable)
            {
                return new Answer<T>.Unreachable();
            }

            return response.IsSuccessStatusCode
                ? new Answer<T>.Given(await ReadAsync<T>(response))
                : new Answer<T>.Refused(await ProblemAsync(response));
        }
        catch (HttpRequestException)
        {
            Reached(false);
            return new Answer<T>.Unreachable();
        }
        catch (JsonException e)
        {
            return new Answer<T>.Refused(new ApiProblem { Title = "The server's answer could not be read.", Status = 0, Detail = e.Message });
        }
    }

    private static async Task<T> ReadAsync<T>(HttpResponseMessage response) =>
        response.StatusCode == HttpStatusCode.NoContent || typeof(T) == typeof(bool)
            ? default!
            : (await response.Content.ReadFromJsonAsync<T>(PlanJson.Options))!;

    private static async Task<ApiProblem> ProblemAsync(HttpResponseMessage response)
    {
        var text = await response.Content.ReadAsStringAsync();
        try
        {
            if (JsonSerializer.Deserialize<ApiProblem>(text, PlanJson.Options) is { } problem)
            {
                return problem;
            }
        }
        catch (JsonException)
        {
            // Not a problem document, for example an error page of something between here and the server.
        }

        return new ApiProblem { Title = $"The server refused with status {(int)response.StatusCode}.", Status = (int)response.StatusCode };
    }

    private void Reached(bool reached)
    {
        if (reached != IsReachable)
        {
            IsReachable = reached;
            ReachableChanged?.Invoke();
        }
    }
}
