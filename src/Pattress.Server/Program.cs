namespace Pattress.Server;

/// <summary>Serves the app and the HTTP API on the loopback address.</summary>
public static class ServerProgram
{
    public static Task Main(string[] args) => WebApplication.CreateBuilder(args).Build().RunAsync();
}
