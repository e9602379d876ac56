namespace Pattress.Server;

/// <summary>How to serve.</summary>
/// <param name="Url">Address; the loopback address unless told otherwise. Port 0 takes a free one.</param>
/// <param name="ServesApp">False serves the API alone.</param>
/// <param name="Quiet">No log of each request.</param>
/// <param name="AssetName">Name of the program whose published files hold the app; empty: the running program's.</param>
public sealed record ServerOptions(string Url = ServerOptions.LoopbackUrl, bool ServesApp = true, bool Quiet = true, string AssetName = "")
{
    public const string LoopbackUrl = "http://localhost:5080";

    /// <summary>The address that the surroundings ask for, else the loopback one.</summary>
    public static ServerOptions FromSurroundings() => new(Environment.GetEnvironmentVariable("ASPNETCORE_URLS") ?? LoopbackUrl);

    /// <summary>Longest request body, bytes: a little above the longest document, whose door names its own bound.</summary>
    public const int MaxBodyBytes = 4_000_000;
}
