using System.Text.Json;

namespace Pattress.Jobs.Doors;

/// <summary>A found value shortened for a message.</summary>
internal static class Snippet
{
    private const int Longest = 80;

    /// <summary>At most 80 characters, control characters shown as spaces.</summary>
    public static string Of(string text)
    {
        string head = text.Length <= Longest ? text : string.Concat(text.AsSpan(0, Cut(text)), "…");
        return string.Create(head.Length, head, (span, s) =>
        {
            for (int i = 0; i < s.Length; i++) span[i] = char.IsControl(s[i]) ? ' ' : s[i];
        });
    }

    /// <summary>A number or word as written; lists and objects by their size.</summary>
    public static string Of(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => $"a list of {element.GetArrayLength()}",
        JsonValueKind.String => $"\"{Of(JsonText.Of(element) ?? "")}\"",
        _ => Of(element.GetRawText()),
    };

    // Never cuts a surrogate pair in two.
    private static int Cut(string text) => char.IsHighSurrogate(text[Longest - 2]) ? Longest - 2 : Longest - 1;
}
