using System.Text;

namespace Pattress.Server.Api;

/// <summary>Reads the bodies of requests: strictly UTF-8, bounded by the server.</summary>
internal static class Bodies
{
    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    public static async Task<Outcome<string>> Read(HttpRequest request, CancellationToken stop)
    {
        using var bytes = new MemoryStream();
        await request.Body.CopyToAsync(bytes, stop);
        try { return Outcome<string>.Of(Strict.GetString(bytes.GetBuffer(), 0, (int)bytes.Length)); }
        catch (DecoderFallbackException) { return Outcome<string>.Refused(new Problem("not_utf8", "$", "", "text in UTF-8")); }
    }
}
