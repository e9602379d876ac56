using System.Text;

namespace Pattress.Trials.Documents;

/// <summary>A record of a user's CSV file with the line it began on; <see cref="Broken"/> when a quote was never closed or misplaced.</summary>
internal readonly record struct CsvLine(int Line, List<string> Fields, bool Broken)
{
    public bool Empty => Fields.Count == 1 && Fields[0].Length == 0 && !Broken;
}

/// <summary>Reads user files after RFC 4180: commas, quotes doubled inside quotes, any line end, a byte order mark forgiven.</summary>
internal sealed class CsvLines(string text)
{
    private readonly StringBuilder _field = new();
    private int _at = text.StartsWith('\uFEFF') ? 1 : 0;
    private int _line = 1;

    public IEnumerable<CsvLine> Read()
    {
        while (_at < text.Length)
        {
            var next = Record();
            if (!next.Empty) yield return next;
        }
    }

    private CsvLine Record()
    {
        int began = _line;
        var fields = new List<string>();
        bool broken = false;
        do fields.Add(Field(ref broken)); while (Take(','));
        if (_at < text.Length && !EndOfLine()) { broken = true; SkipLine(); }
        return new(began, fields, broken);
    }

    private string Field(ref bool broken)
    {
        SkipBlanks();
        if (Take('"')) return Quoted(ref broken);
        int from = _at;
        while (_at < text.Length && text[_at] is not (',' or '\n' or '\r')) _at++;
        return text[from.._at].TrimEnd();
    }

    private string Quoted(ref bool broken)
    {
        _field.Clear();
        for (; _at < text.Length; _at++)
        {
            if (text[_at] == '\n') _line++;
            if (text[_at] == '"' && !(_at + 1 < text.Length && text[++_at] == '"')) return Closed();
            _field.Append(text[_at]);
        }
        broken = true;
        return _field.ToString();
    }

    /// <summary>After the closing quote; a quote that ends the text is passed over here.</summary>
    private string Closed()
    {
        if (_at < text.Length && text[_at] == '"') _at++;
        SkipBlanks();
        return _field.ToString().Trim();
    }

    private void SkipBlanks()
    {
        while (_at < text.Length && text[_at] is ' ' or '\t') _at++;
    }

    private bool Take(char c)
    {
        if (_at >= text.Length || text[_at] != c) return false;
        _at++;
        return true;
    }

    private bool EndOfLine()
    {
        bool ended = Take('\r') | Take('\n');
        if (ended) _line++;
        return ended;
    }

    private void SkipLine()
    {
        while (_at < text.Length && !EndOfLine()) _at++;
    }
}
