using System.Globalization;
using System.Text;

namespace Pattress.Jobs.Doors;

/// <summary>Where a value stands in its document; written out only when something is wrong there.</summary>
public sealed class JsonPath
{
    private readonly JsonPath? _parent;
    private readonly string _name;
    private readonly int _index;

    private JsonPath(JsonPath? parent, string name, int index) => (_parent, _name, _index) = (parent, name, index);

    /// <summary>The document itself, <c>$</c>.</summary>
    public static JsonPath Root { get; } = new(null, "$", -1);

    /// <summary>The path of a field of the object that stands here.</summary>
    public JsonPath Field(string name) => new(this, name, -1);

    /// <summary>The path of an item of the list that stands here, counted from 0.</summary>
    public JsonPath Item(int index) => new(this, "", index);

    public override string ToString()
    {
        var text = new StringBuilder();
        WriteTo(text);
        return text.ToString();
    }

    private void WriteTo(StringBuilder text)
    {
        _parent?.WriteTo(text);
        if (_parent is null) text.Append('$');
        else if (_index >= 0) text.Append('[').Append(_index.ToString(CultureInfo.InvariantCulture)).Append(']');
        else if (IsPlain(_name)) text.Append('.').Append(_name);
        else text.Append("['").Append(Snippet.Of(_name).Replace("'", "\\'", StringComparison.Ordinal)).Append("']");
    }

    private static bool IsPlain(string name) => name.Length is > 0 and <= 80 && name.All(c => char.IsAsciiLetterOrDigit(c) || c == '_');
}
