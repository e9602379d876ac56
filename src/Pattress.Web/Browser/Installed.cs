using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Pattress.Web.Browser;

/// <summary>The app as it is installed on this device: <c>wwwroot/js/installed.js</c>.</summary>
[SupportedOSPlatform("browser")]
internal static partial class Installed
{
    private const string Module = "installed";

    public static Task Load() => JSHost.ImportAsync(Module, "../js/installed.js");

    /// <summary>Keeps the app for use without a signal; says when a newer version waits to be taken.</summary>
    [JSImport("install", Module)]
    public static partial Task Install([JSMarshalAs<JSType.Function>] Action newer);

    /// <summary>Takes the newer version and starts again.</summary>
    [JSImport("take", Module)]
    public static partial void Take();

    /// <summary>Asks the browser not to clear what is kept here.</summary>
    [JSImport("persist", Module)]
    public static partial Task<bool> Persist();

    /// <summary><c>usage</c> and <c>quota</c> in bytes, noughts where the browser does not say; <c>persisted</c> when it will not clear them.</summary>
    [JSImport("room", Module)]
    public static partial Task<JSObject> Room();

    [JSImport("theme", Module)]
    public static partial void Theme(string name);

    [JSImport("themeNow", Module)]
    public static partial string ThemeNow();
}
