using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

await WebAssemblyHostBuilder.CreateDefault(args).Build().RunAsync();
