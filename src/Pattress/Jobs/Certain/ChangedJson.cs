using System.Text.Json;
using Pattress.Jobs.Text;

namespace Pattress.Jobs.Certain;

/// <summary>What changed because of tests and pulls, as every document has it.</summary>
internal static class ChangedJson
{
    public static void Write(Utf8JsonWriter json, ChangedItem item)
    {
        json.WriteString("id", item.Id);
        json.WriteString("verdict_before", Words.Of(item.Before));
        json.WriteString("verdict_after", Words.Of(item.After));
        json.WriteMaybe("fixing_before", item.FixingBefore);
        json.WriteMaybe("fixing_after", item.FixingAfter);
    }
}
