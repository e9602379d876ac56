namespace Pattress.Server;

/// <summary>Serves the app and the HTTP API on the loopback address.</summary>
public static class ServerProgram
{
    public static async Task<int> Main(string[] args)
    {
        var options = ServerOptions.FromSurroundings();
        return await Run(args is ["--urls", var url] ? options with { Url = url } : options, Console.Out, Console.Error, CancellationToken.None);
    }

    /// <summary>Serves until cancelled or stopped. Returns 1 when the address cannot be had.</summary>
    public static async Task<int> Run(ServerOptions options, TextWriter output, TextWriter error, CancellationToken stop)
    {
        await using var app = Build(options);
        try
        {
            await app.StartAsync(stop);
        }
        catch (IOException e)
        {
            await error.WriteLineAsync($"pattress: cannot serve on {options.Url}: {e.Message}");
            return 1;
        }
        await output.WriteLineAsync($"Pattress serves on {app.Urls.First()} (Ctrl-C stops it)");
        await app.WaitForShutdownAsync(stop);
        return 0;
    }

    /// <summary>The server, not yet started.</summary>
    public static WebApplication Build(ServerOptions options)
    {
        var builder = WebApplication.CreateBuilder(Settings(options));
        builder.WebHost.UseUrls(options.Url);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = ServerOptions.MaxBodyBytes;
        });
        builder.Logging.SetMinimumLevel(options.Quiet ? LogLevel.Warning : LogLevel.Information);
        if (options.ServesApp) builder.WebHost.UseStaticWebAssets();
        return Pipeline(builder.Build(), options);
    }

    // The files lie beside the program, wherever it is started from.
    private static WebApplicationOptions Settings(ServerOptions options) => new()
    {
        ContentRootPath = AppContext.BaseDirectory,
        ApplicationName = options.AssetName.Length > 0 ? options.AssetName : null,
    };

    private static WebApplication Pipeline(WebApplication app, ServerOptions options)
    {
        app.UseExceptionHandler(failed => failed.Run(Api.Problems.Unexpected));
        app.Use(SecurityHeaders.Add);
        app.UseStatusCodePages(Api.Problems.EmptyStatus);
        Api.Endpoints.Map(app);
        if (options.ServesApp)
        {
            app.MapStaticAssets();
            app.MapFallbackToFile("index.html");
        }
        return app;
    }
}
