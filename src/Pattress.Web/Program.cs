using System.Runtime.Versioning;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;
using Pattress.Web.Browser;
using Pattress.Web.Desks;

[assembly: SupportedOSPlatform("browser")]

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<Pattress.Web.App>("#app");
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddSingleton<Desk>();
builder.Services.AddSingleton<Words>();
builder.Services.AddSingleton<Viewport>();
builder.Services.AddSingleton<Keeper>();
builder.Services.AddSingleton<Pattress.Planning.Programs.IProgramSolver, WorkerSolver>();
builder.Services.AddSingleton<Shopping>();
builder.Services.AddSingleton<OwnCatalogue>();
builder.Services.AddSingleton<Newer>();
builder.Services.AddSingleton<Importer>();
builder.Services.AddSingleton<PaperPress>();
await Task.WhenAll(Page.Load(), Store.Load(), OnSite.Load(), Installed.Load(), Moving.Load());
var host = builder.Build();
// No job is laid on the desk yet: the list of jobs needs none, and every other page asks for it (App.razor).
host.Services.GetRequiredService<Keeper>().Listen();
host.Services.GetRequiredService<OwnCatalogue>().Listen();
Doors.Desk = host.Services.GetRequiredService<Desk>();
Doors.Desk.Speak(Page.English());
_ = host.Services.GetRequiredService<Newer>().Watch();
await host.RunAsync();
