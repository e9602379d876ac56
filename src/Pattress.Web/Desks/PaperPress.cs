using System.Runtime.CompilerServices;
using System.Runtime.Versioning;
using Microsoft.AspNetCore.Components.WebAssembly.Services;
using Pattress.Papers.Documents;
using Pattress.Papers.Sheets;
using Pattress.Pdf;
using Pattress.Web.Browser;

namespace Pattress.Web.Desks;

/// <summary>Makes papers in this browser. What writes PDF is fetched when the first one is asked for.</summary>
[SupportedOSPlatform("browser")]
public sealed class PaperPress(LazyAssemblyLoader loader, Desk desk, TimeProvider clock)
{
    /// <summary>What is fetched late: as <c>BlazorWebAssemblyLazyLoad</c> in the project has it.</summary>
    private static readonly string[] Late = ["Pattress.Pdf.wasm", "PdfSharp.wasm", "PdfSharp.Shared.wasm", "PdfSharp.System.wasm"];

    private Task? _ready;

    /// <summary>Fetches what is needed, once; after a failure the next call tries again.</summary>
    public Task Ready() => _ready is null or { IsFaulted: true } or { IsCanceled: true } ? _ready = Fetch() : _ready;

    /// <summary>One paper of the job on the desk, as a PDF file.</summary>
    public async Task<byte[]> Make(string id, PaperSize size)
    {
        await Ready();
        return Write(new PaperInput(desk.Job, desk.Plan, clock.GetUtcNow(), size), id);
    }

    private async Task Fetch()
    {
        await PaperFile.Load();
        await loader.LoadAssembliesAsync(Late);
    }

    // Not inlined: whoever calls it must not need the late parts before they are there.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static byte[] Write(PaperInput input, string id) => PdfPapers.Write(PaperBook.Of(id, input), input.Made);
}
