using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Pattress.Web.Browser;

/// <summary>The few things that only the browser can do: <c>wwwroot/js/pattress.js</c>.</summary>
[SupportedOSPlatform("browser")]
internal static partial class Page
{
    private const string Module = "pattress";

    public static Task Load() => JSHost.ImportAsync(Module, "../js/pattress.js");

    /// <summary>Where a touch on the client area lies on the drawing inside the element, px of the drawing.</summary>
    [JSImport("placeOn", Module)]
    [return: JSMarshalAs<JSType.Array<JSType.Number>>]
    public static partial double[] PlaceOn(string elementId, double clientX, double clientY);

    /// <summary>Width for drawings and the height of a letter, px.</summary>
    [JSImport("room", Module)]
    [return: JSMarshalAs<JSType.Array<JSType.Number>>]
    public static partial double[] Room();

    [JSImport("onResize", Module)]
    public static partial void OnResize([JSMarshalAs<JSType.Function>] Action resized);

    [JSImport("openDialog", Module)]
    public static partial void OpenDialog(string elementId);

    [JSImport("closeDialog", Module)]
    public static partial void CloseDialog(string elementId);

    [JSImport("save", Module)]
    public static partial void Save(string fileName, string text);

    [JSImport("copy", Module)]
    public static partial Task<bool> Copy(string text);

    [JSImport("language", Module)]
    public static partial void Language(string tag, string title, string english);

    /// <summary>The language spoken last on this device, as settings have it; empty where none was.</summary>
    [JSImport("english", Module)]
    public static partial string English();
}
