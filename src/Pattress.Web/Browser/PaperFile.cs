using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Pattress.Web.Browser;

/// <summary>Saves files made here: <c>wwwroot/js/papers.js</c>.</summary>
[SupportedOSPlatform("browser")]
internal static partial class PaperFile
{
    private const string Module = "pattress-papers";

    public static Task Load() => JSHost.ImportAsync(Module, "../js/papers.js");

    [JSImport("save", Module)]
    public static partial void Save(string fileName, string type, byte[] bytes);
}
