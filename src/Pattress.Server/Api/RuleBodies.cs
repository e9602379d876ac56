using System.Text.Json;

namespace Pattress.Server.Api;

/// <summary>A rule asked over HTTP: <c>{"id":"…","inputs":{"d":"5 mm","rho_k":350}}</c>.</summary>
internal static class RuleBodies
{
    private const string Allowed = "an object with id and inputs, each input a number or text";

    public static Reply Answer(string body)
    {
        try
        {
            using var document = JsonDocument.Parse(body, new JsonDocumentOptions { MaxDepth = 4 });
            return Answer(document.RootElement);
        }
        catch (JsonException)
        {
            return Refused("not_json", "$", "");
        }
    }

    private static Reply Answer(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object) return Refused("wrong_type", "$", root.ValueKind.ToString());
        var inputs = new Dictionary<string, string>(StringComparer.Ordinal);
        string? id = null;
        foreach (var field in root.EnumerateObject())
        {
            if (field.Name == "id" && field.Value.ValueKind == JsonValueKind.String) id = field.Value.GetString();
            else if (field.Name == "inputs" && field.Value.ValueKind == JsonValueKind.Object && Take(field.Value, inputs)) continue;
            else return Refused("unknown_field", "$." + field.Name, "");
        }
        return id is null ? Refused("missing_field", "$.id", "") : RuleQuestions.Evaluate(id, inputs);
    }

    private static bool Take(JsonElement given, Dictionary<string, string> inputs) =>
        given.EnumerateObject().All(input => input.Value.ValueKind is JsonValueKind.String or JsonValueKind.Number && inputs.TryAdd(input.Name, input.Value.ToString()));

    private static Reply Refused(string code, string path, string value) => Reply.Refused([new Problem(code, path, value, Allowed)]);
}
