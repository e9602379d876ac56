using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Pattress.Web.Browser;

/// <summary>What is kept on this device: <c>wwwroot/js/keep.js</c>.</summary>
[SupportedOSPlatform("browser")]
internal static partial class Store
{
    private const string Module = "keep";

    public static Task Load() => JSHost.ImportAsync(Module, "../js/keep.js");

    /// <summary>Keeps a job if nobody kept it since; gives the new revision.</summary>
    /// <param name="revision">The revision it was read at; below 0: whatever there is.</param>
    [JSImport("keep", Module)]
    public static partial Task<int> Keep(string id, string title, string text, string standing, int revision);

    [JSImport("kept", Module)]
    public static partial Task<string?> Kept(string id);

    [JSImport("revision", Module)]
    public static partial Task<int> Revision(string id);

    /// <summary>Kept jobs, one a line: id, tab, moment (ms), tab, how it stands, tab, title; last changed first.</summary>
    [JSImport("keptJobs", Module)]
    public static partial Task<string> KeptJobs();

    [JSImport("forget", Module)]
    public static partial Task Forget(string id);

    [JSImport("lastOpened", Module)]
    public static partial Task<string?> LastOpened();

    [JSImport("setLastOpened", Module)]
    public static partial Task SetLastOpened(string id);

    /// <summary>Another tab kept the job of this id.</summary>
    [JSImport("onKept", Module)]
    public static partial void OnKept([JSMarshalAs<JSType.Function<JSType.String>>] Action<string> heard);

    /// <summary>The catalogue of the user's own trials, as its document.</summary>
    [JSImport("keptTrials", Module)]
    public static partial Task<string?> KeptTrials();

    [JSImport("keepTrials", Module)]
    public static partial Task KeepTrials(string text);

    [JSImport("forgetPhoto", Module)]
    public static partial Task ForgetPhoto(string id);
}
