using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Pattress.Web.Browser;

/// <summary>Things moved on a drawing by finger, mouse or keys: <c>wwwroot/js/moving.js</c>.</summary>
[SupportedOSPlatform("browser")]
internal static partial class Moving
{
    private const string Module = "moving";

    public static Task Load() => JSHost.ImportAsync(Module, "../js/moving.js");

    /// <summary>Watches the handles on a drawing. Each callback gets the number of the gesture, a blank, and the id of the handle.</summary>
    /// <param name="moving">Every frame, where it is, px of the drawing.</param>
    /// <param name="settled">It has stood still for a moment, or was let go: where, px.</param>
    /// <param name="stepped">It was moved with the keys: steps to the right, steps up.</param>
    [JSImport("watch", Module)]
    public static partial void Watch(
        string elementId,
        [JSMarshalAs<JSType.Function<JSType.String, JSType.Number, JSType.Number>>] Action<string, double, double> moving,
        [JSMarshalAs<JSType.Function<JSType.String, JSType.Number, JSType.Number>>] Action<string, double, double> settled,
        [JSMarshalAs<JSType.Function<JSType.String, JSType.Number, JSType.Number>>] Action<string, double, double> stepped);
}
