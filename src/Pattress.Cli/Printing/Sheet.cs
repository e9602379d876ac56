using System.Text;
using System.Text.RegularExpressions;
using Pattress.Jobs;
using Pattress.Jobs.Text;
using Pattress.Papers.Elevations;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace Pattress.Cli.Printing;

/// <summary>Lays text out to the terminal's width: headings, indented paragraphs, lists and tables without lines.</summary>
internal sealed partial class Sheet
{
    private readonly StringWriter _text = new();
    private readonly IAnsiConsole _console;
    private readonly Settings _settings;

    /// <param name="settings">The language of what it says.</param>
    public Sheet(Terminal terminal, Settings settings)
    {
        (int width, bool colour) = (terminal.Width, terminal.Colour);
        _settings = settings;
        _console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = colour ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = colour ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(_text),
        });
        _console.Profile.Width = width;
        _console.Profile.Capabilities.Unicode = true;
    }

    /// <summary>The text of a code of the command line, <c>cli.CODE</c>.</summary>
    public string T(string code, params IReadOnlyList<Said> values) => Texts.Sentence("cli." + code, values, _settings);

    /// <summary>One thing or several, by the codes <c>cli.CODE.one</c> and <c>cli.CODE</c>.</summary>
    public string Count(string code, int n) => T(n == 1 ? code + ".one" : code, Said.Count(n));

    /// <summary>A table whose heads are codes; one behind <c>&gt;</c> is set to the right.</summary>
    public Table Table(params IReadOnlyList<string> codes) => Columns.Of([.. codes.Select(c => c.StartsWith('>') ? ">" + T(c[1..]) : T(c))]);

    public string Verdict(Verdict verdict) => Verdict(Verdicts.Id(verdict));

    /// <summary>A verdict's word in capitals.</summary>
    public string Verdict(string id) => Texts.Name("verdict_" + id, _settings).ToUpperInvariant();

    public void Heading(string text)
    {
        _console.WriteLine();
        _console.Write(new Text(Clean(text) + "\n", new Style(decoration: Decoration.Bold)));
    }

    public void Paragraph(string text, int indent = 0, Style? style = null) => Write(new Text(Clean(text), style), indent);

    public void Gap() => _console.WriteLine();

    /// <summary>A paragraph behind a mark, the following lines hanging under its text.</summary>
    public void Item(string mark, string text, int indent = 0) => Item(mark, new Text(Clean(text)), indent);

    public void Item(string mark, IRenderable text, int indent = 0)
    {
        var grid = new Grid().AddColumn(new GridColumn().NoWrap().Padding(0, 0, 1, 0)).AddColumn(new GridColumn().Padding(0, 0, 0, 0));
        Write(grid.AddRow(new Text(mark), text), indent);
    }

    public void Write(IRenderable what, int indent = 0) => _console.Write(new Padder(what, new Padding(indent, 0, 0, 0)));

    /// <summary>Everything, without blanks at the ends of lines.</summary>
    public override string ToString() =>
        string.Join('\n', _text.ToString().Replace(Joined, ' ').ReplaceLineEndings("\n").Split('\n').Select(l => l.TrimEnd())).Trim('\n') + "\n";

    /// <summary>What a user wrote, without what a terminal would obey.</summary>
    public static string Clean(string text) => UnitBehindNumber().Replace(WithoutCommands(text), Joined.ToString());

    private static string WithoutCommands(string text)
    {
        if (!text.Any(IsCommand)) return text;
        var clean = new StringBuilder(text.Length);
        foreach (char c in text) clean.Append(IsCommand(c) ? ' ' : c);
        return clean.ToString();
    }

    // Stands for a blank at which no line ends; the console breaks at every blank, the unbreakable one too.
    private const char Joined = '\uE000';

    /// <summary>The blank between a number and its unit.</summary>
    [GeneratedRegex("(?<=[0-9]) (?=(%|mm|kg|kN|N|lb|in|min)(?![A-Za-z]))")]
    private static partial Regex UnitBehindNumber();

    private static bool IsCommand(char c) => char.IsControl(c) && c != '\n';
}
