using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Pattress.Web.Browser;

/// <summary>A finger on the glass, the camera, the screen that stays on: <c>wwwroot/js/site.js</c>.</summary>
[SupportedOSPlatform("browser")]
internal static partial class OnSite
{
    private const string Module = "site";

    public static Task Load() => JSHost.ImportAsync(Module, "../js/site.js");

    [JSImport("signOn", Module)]
    public static partial void SignOn(string elementId);

    /// <summary>Strokes by semicolon, points by space, <c>x,y</c> from 0 to 1000.</summary>
    [JSImport("strokes", Module)]
    public static partial string Strokes(string elementId);

    [JSImport("wipe", Module)]
    public static partial void Wipe(string elementId);

    [JSImport("print", Module)]
    public static partial void Print();

    [JSImport("awake", Module)]
    public static partial Task Awake(bool on);

    /// <summary>Keeps the photo that was chosen, made small and without what else the file held.</summary>
    [JSImport("addPhoto", Module)]
    public static partial Task<bool> AddPhoto(string inputId, string id, string wall, int mostPx);

    /// <summary>Photos of a wall, one a line: id, width, height, address, marks, by tabs.</summary>
    [JSImport("photosOf", Module)]
    public static partial Task<string> PhotosOf(string wall);

    [JSImport("markPhoto", Module)]
    public static partial Task MarkPhoto(string wall, string id, string marks);

    /// <summary>Where a touch lies on an element, as parts of its width and height.</summary>
    [JSImport("partOf", Module)]
    [return: JSMarshalAs<JSType.Array<JSType.Number>>]
    public static partial double[] PartOf(string elementId, double clientX, double clientY);
}
