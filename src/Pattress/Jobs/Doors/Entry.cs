namespace Pattress.Jobs.Doors;

/// <summary>
/// A checked value of a document. Fields that were left out or refused are null, so that later checks can go on with
/// the rest; once a document has no problems every required field is there.
/// </summary>
public sealed class Entry
{
    private readonly IReadOnlyDictionary<string, Entry> _fields = new Dictionary<string, Entry>();

    private Entry(JsonPath path) => Path = path;

    /// <summary>Where it stands.</summary>
    public JsonPath Path { get; }

    /// <summary>A number in the unit that its field names.</summary>
    public double Number { get; private init; }

    /// <summary>A text, word or id.</summary>
    public string Text { get; private init; } = "";

    /// <summary>The items of a list; refused ones are left out.</summary>
    public IReadOnlyList<Entry> Items { get; private init; } = [];

    /// <summary>A point on a wall, mm.</summary>
    public Point Point { get; private init; }

    /// <summary>Names of the fields that are there and good, in the document's order.</summary>
    public IEnumerable<string> Names => _fields.Keys;

    /// <summary>A field of an object, or null when it is not there or was refused.</summary>
    public Entry? this[string name] => _fields.GetValueOrDefault(name);

    private Entry(JsonPath path, IReadOnlyDictionary<string, Entry> fields) : this(path) => _fields = fields;

    /// <summary>The number of a required field.</summary>
    public double NumberOf(string name) => _fields[name].Number;

    /// <summary>The number of a field, or its default.</summary>
    public double NumberOr(string name, double otherwise) => this[name]?.Number ?? otherwise;

    /// <summary>The number of a field, or null when it was left out.</summary>
    public double? MaybeNumber(string name) => this[name]?.Number;

    /// <summary>The text of a required field.</summary>
    public string TextOf(string name) => _fields[name].Text;

    /// <summary>The text of a field, or its default.</summary>
    public string TextOr(string name, string otherwise) => this[name]?.Text ?? otherwise;

    /// <summary>The text of a field, or null when it was left out.</summary>
    public string? MaybeText(string name) => this[name]?.Text;

    /// <summary>The items of a list field; none when it was left out.</summary>
    public IReadOnlyList<Entry> ItemsOf(string name) => this[name]?.Items ?? [];

    /// <summary>The point of a field, or null when it was left out.</summary>
    public Point? MaybePoint(string name) => this[name]?.Point;

    internal static Entry OfNumber(JsonPath path, double number) => new(path) { Number = number };

    internal static Entry OfText(JsonPath path, string text) => new(path) { Text = text };

    internal static Entry OfPoint(JsonPath path, Point point) => new(path) { Point = point };

    internal static Entry OfList(JsonPath path, IReadOnlyList<Entry> items) => new(path) { Items = items };

    internal static Entry OfFields(JsonPath path, IReadOnlyDictionary<string, Entry> fields) => new(path, fields);
}
