using Microsoft.AspNetCore.Builder;
using Pattress.Server;

namespace Pattress.Apps.Tests.Api;

/// <summary>The HTTP API on a free port of the loopback address.</summary>
public sealed class ServerFixture : IAsyncLifetime
{
    private readonly WebApplication _app = ServerProgram.Build(new("http://127.0.0.1:0", ServesApp: false));

    public HttpClient Client { get; } = new();

    public async ValueTask InitializeAsync()
    {
        await _app.StartAsync();
        Client.BaseAddress = new Uri(_app.Urls.First());
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await _app.DisposeAsync();
    }
}
