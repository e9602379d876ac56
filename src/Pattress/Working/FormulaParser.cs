using System.Globalization;

namespace Pattress.Working;

/// <summary>Reads the part of C# in which formulas are written. Throws <see cref="FormatException"/> on anything else.</summary>
internal ref struct FormulaParser(ReadOnlySpan<char> text)
{
    private static readonly string[][] Levels = [["||"], ["&&"], ["=="], ["<=", ">=", "<", ">"], ["+", "-"], ["*", "/"]];

    private readonly ReadOnlySpan<char> _text = text;
    private int _at;

    internal static FormulaNode Parse(ReadOnlySpan<char> text)
    {
        var parser = new FormulaParser(text);
        var node = parser.Choice();
        parser.Blanks();
        return parser._at == text.Length ? node : throw parser.Fault();
    }

    private FormulaNode Choice()
    {
        var condition = Binary(0);
        if (!Take("?")) return condition;
        var then = Choice();
        if (!Take(":")) throw Fault();
        return new ChoiceNode(condition, then, Choice());
    }

    private FormulaNode Binary(int level)
    {
        if (level == Levels.Length) return Unary();
        var left = Binary(level + 1);
        while (TakeAny(Levels[level]) is { } op) left = new BinaryNode(op, left, Binary(level + 1));
        return left;
    }

    private FormulaNode Unary() => Take("-") ? new MinusNode(Unary()) : Atom();

    private FormulaNode Atom()
    {
        if (Take("("))
        {
            var inner = Choice();
            return Take(")") ? inner : throw Fault();
        }
        Blanks();
        if (_at < _text.Length && (char.IsAsciiDigit(_text[_at]) || _text[_at] == '.')) return Number();
        return Name();
    }

    private NumberNode Number()
    {
        int start = _at;
        while (_at < _text.Length && (char.IsAsciiDigit(_text[_at]) || _text[_at] == '.' || IsExponent())) _at++;
        string digits = _text[start.._at].ToString();
        return new NumberNode(double.Parse(digits, NumberStyles.Float, CultureInfo.InvariantCulture), digits);
    }

    // The sign belongs to the number only right after its E.
    private readonly bool IsExponent() =>
        _text[_at] is 'e' or 'E' || (_text[_at] is '-' or '+' && _text[_at - 1] is 'e' or 'E' && char.IsAsciiDigit(_text[_at - 2]));

    private FormulaNode Name()
    {
        int start = _at;
        while (_at < _text.Length && (char.IsLetterOrDigit(_text[_at]) || _text[_at] == '_')) _at++;
        if (start == _at) throw Fault();
        string name = _text[start.._at].ToString();
        if (!Take("(")) return new NameNode(name);
        var arguments = new List<FormulaNode>();
        do { arguments.Add(Choice()); } while (Take(","));
        return Take(")") ? new CallNode(name, arguments) : throw Fault();
    }

    private string? TakeAny(string[] operators)
    {
        foreach (string op in operators) if (Take(op)) return op;
        return null;
    }

    private bool Take(string token)
    {
        Blanks();
        if (!_text[_at..].StartsWith(token, StringComparison.Ordinal)) return false;
        _at += token.Length;
        return true;
    }

    private void Blanks()
    {
        while (_at < _text.Length && _text[_at] == ' ') _at++;
    }

    private readonly FormatException Fault() => new($"cannot read the formula at {_at}: {_text}");
}
