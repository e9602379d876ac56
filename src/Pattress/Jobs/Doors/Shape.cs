using System.Text.Json;

namespace Pattress.Jobs.Doors;

/// <summary>
/// What may stand at one place of a document. One description serves the strict reader and the published schema,
/// so that the two cannot drift apart.
/// </summary>
public abstract class Shape
{
    /// <summary>What is allowed here, in plain words.</summary>
    public abstract string Allowed { get; }

    /// <summary>Reads a value; adds every problem and returns null when the value as a whole is of no use.</summary>
    internal abstract Entry? Read(JsonElement element, JsonPath path, ProblemList problems);

    /// <summary>Writes the keywords of JSON Schema 2020-12 into the schema object that is open.</summary>
    internal abstract void WriteKeywords(Utf8JsonWriter json);

    internal void WriteSchema(Utf8JsonWriter json, string note = "")
    {
        json.WriteStartObject();
        if (note.Length > 0) json.WriteString("description", note);
        WriteKeywords(json);
        json.WriteEndObject();
    }

    private protected Entry? WrongType(JsonElement element, JsonPath path, ProblemList problems)
    {
        problems.Add("wrong_type", path, element, Allowed);
        return null;
    }
}

/// <summary>A field of an object.</summary>
/// <param name="Name">Name in the document, with its unit.</param>
/// <param name="Note">Stands in the schema as its description.</param>
public sealed record Field(string Name, Shape Shape, bool IsRequired, string Note = "")
{
    public static Field Required(string name, Shape shape, string note = "") => new(name, shape, true, note);

    public static Field Optional(string name, Shape shape, string note = "") => new(name, shape, false, note);
}
