using System.Text.Json;

namespace Pattress.Jobs.Doors;

/// <summary>Reads texts and names that may hold half a surrogate pair, which the JSON parser lets through and throws on later.</summary>
internal static class JsonText
{
    /// <summary>The text, or null when it is not valid Unicode.</summary>
    public static string? Of(JsonElement element)
    {
        try { return element.GetString(); }
        catch (InvalidOperationException) { return null; }
    }

    /// <summary>The field's name, or null when it is not valid Unicode.</summary>
    public static string? NameOf(JsonProperty property)
    {
        try { return property.Name; }
        catch (InvalidOperationException) { return null; }
    }
}
