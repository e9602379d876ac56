using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace Pattress.Jobs.Doors;

/// <summary>How much a door lets through.</summary>
/// <param name="MaxBytes">Longest document, bytes of UTF-8.</param>
/// <param name="MaxDepth">Deepest nesting.</param>
public readonly record struct DoorLimits(int MaxBytes, int MaxDepth)
{
    /// <summary>2 MB and 16 levels: a large job has some hundred kB and 6 levels.</summary>
    public static DoorLimits Usual { get; } = new(2_000_000, 16);
}

/// <summary>The strict way in for JSON documents: every problem is reported at once, with its path, and nothing is guessed.</summary>
public static class Door
{
    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    /// <summary>Reads a document of UTF-8 bytes against its shape.</summary>
    public static Outcome<Entry> Read(ReadOnlyMemory<byte> json, Shape shape, DoorLimits? limits = null)
    {
        var problems = new ProblemList();
        var entry = Read(json, shape, limits ?? DoorLimits.Usual, problems);
        return problems.IsEmpty && entry is not null ? Outcome<Entry>.Of(entry) : Outcome<Entry>.Refused(problems.Problems);
    }

    /// <summary>Reads a document from a text against its shape.</summary>
    public static Outcome<Entry> Read(string json, Shape shape, DoorLimits? limits = null)
    {
        var problems = new ProblemList();
        var bytes = Bytes(json, limits ?? DoorLimits.Usual, problems);
        return problems.IsEmpty ? Read(bytes, shape, limits) : Outcome<Entry>.Refused(problems.Problems);
    }

    /// <summary>Reads what it can and adds the problems, so that further checks can add theirs.</summary>
    internal static Entry? Read(ReadOnlyMemory<byte> json, Shape shape, DoorLimits limits, ProblemList problems)
    {
        using var document = Parse(json, limits, problems);
        return document is null ? null : shape.Read(document.RootElement, JsonPath.Root, problems);
    }

    /// <summary>The text as UTF-8; half a surrogate pair or too long a text is a problem.</summary>
    internal static ReadOnlyMemory<byte> Bytes(string json, DoorLimits limits, ProblemList problems)
    {
        if (json.Length > limits.MaxBytes) TooLarge(json.Length, limits, problems);
        else
        {
            try { return Strict.GetBytes(json); }
            catch (EncoderFallbackException) { problems.Add("not_utf8", JsonPath.Root, "", "text in UTF-8"); }
        }
        return default;
    }

    /// <summary>The parsed document, or null and one problem when it is no JSON, too large or too deep.</summary>
    internal static JsonDocument? Parse(ReadOnlyMemory<byte> json, DoorLimits limits, ProblemList problems)
    {
        if (json.Length > limits.MaxBytes) TooLarge(json.Length, limits, problems);
        else if (!Utf8.IsValid(json.Span)) problems.Add("not_utf8", JsonPath.Root, "", "text in UTF-8");
        else
        {
            var text = json.Span.StartsWith("\uFEFF"u8) ? json[3..] : json;
            try { return JsonDocument.Parse(text, new JsonDocumentOptions { MaxDepth = limits.MaxDepth }); }
            catch (JsonException) { problems.Add(SyntaxFault.Find(text.Span, limits.MaxDepth)); }
        }
        return null;
    }

    private static void TooLarge(int length, DoorLimits limits, ProblemList problems) =>
        problems.Add("too_large", JsonPath.Root, $"{length} bytes", $"at most {limits.MaxBytes} bytes");
}
