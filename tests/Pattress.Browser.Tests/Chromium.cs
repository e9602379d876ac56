using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Pattress.Browser.Tests.Chromium))]

namespace Pattress.Browser.Tests;

/// <summary>The system's chromium; a missing one is a failure, not a reason to skip.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private const string Program = "/usr/bin/chromium";

    private static readonly string[] Flags =
        ["--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    private IPlaywright? _playwright;

    public IBrowser Browser { get; private set; } = null!;

    /// <summary>Devices that have the app installed.</summary>
    public Devices Devices { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        Assert.True(File.Exists(Program), $"{Program} is missing; ./test installs it");
        // A machine that does other work is no reason to fail.
        Assertions.SetDefaultExpectTimeout(30_000);
        _playwright = await Playwright.CreateAsync();
        Browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = Program, Args = Flags });
        Devices = new(Browser);
    }

    public async ValueTask DisposeAsync()
    {
        await Browser.DisposeAsync();
        _playwright?.Dispose();
    }
}
