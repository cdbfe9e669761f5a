using Microsoft.AspNetCore.Components.Web;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;
using Scrapwright.Client;
using Scrapwright.Client.Browser;
using Scrapwright.Client.Shell;

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<App>("#app");
builder.RootComponents.Add<HeadOutlet>("head::after");
builder.Services.AddScoped(_ => new HttpClient { BaseAddress = new Uri(builder.HostEnvironment.BaseAddress) });
builder.Services.AddScoped<Server>();
builder.Services.AddScoped<Workshop>();
builder.Services.AddScoped<PlanRun>();
builder.Services.AddScoped<BrowserDoor>();
builder.Services.AddScoped<Drafts>();
builder.Services.AddScoped<Undoing>();
builder.Services.AddScoped<Announcer>();
builder.Services.AddScoped<KeptChoices>();
await builder.Build().RunAsync();
