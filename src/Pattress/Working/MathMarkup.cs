using System.Text;

namespace Pattress.Working;

/// <summary>A set formula as MathML Core, which browsers draw and read aloud.</summary>
public static class MathMarkup
{
    /// <summary>One formula in pieces that a line may be broken between, each an element of its own.</summary>
    public static string Line(params IReadOnlyList<Setting> parts)
    {
        var markup = new StringBuilder();
        foreach (var piece in FormulaSetting.Pieces(FormulaSetting.Row(parts)))
        {
            if (markup.Length > 0) markup.Append(' ');
            markup.Append("<math>");
            Write(piece, markup);
            markup.Append("</math>");
        }
        return markup.ToString();
    }

    private static void Write(Setting setting, StringBuilder to)
    {
        switch (setting)
        {
            case SetText { IsNumber: true } t: Leaf("mn", t.Text, to); break;
            case SetText { Text: "−" }: Leaf("mo form=\"prefix\"", "−", to); break;
            case SetText t: Leaf(t.Text[0] == '\u00A0' ? "mtext" : "mi", t.Text, to); break;
            case SetSign s: Sign(s.Sign, to); break;
            case SetRow r: Element("mrow", to, [.. r.Parts]); break;
            case SetScript s: Script(s, to); break;
            case SetFraction f: Element("mfrac", to, f.Over, f.Under); break;
            case SetRoot { Index: "" } r: Element("msqrt", to, r.Of); break;
            case SetRoot r: Element("mroot", to, r.Of, new SetText(r.Index)); break;
            case SetFence f: Fence(f, to); break;
            default: throw new ArgumentException(setting.GetType().Name, nameof(setting));
        }
    }

    // Words between two parts, and signs of calculation, which have room of their own.
    private static void Sign(string sign, StringBuilder to)
    {
        if (sign.Trim().Length > 0 && sign.Any(char.IsLetter)) Leaf("mtext", sign.Replace(' ', '\u00A0'), to);
        else Leaf("mo", sign.Trim(), to);
    }

    private static void Script(SetScript s, StringBuilder to)
    {
        string name = s.Below.Length == 0 ? "msup" : s.Above == null ? "msub" : "msubsup";
        to.Append('<').Append(name).Append('>');
        Write(s.Of, to);
        if (s.Below.Length > 0) Leaf("mtext", s.Below, to);
        if (s.Above != null) Write(s.Above, to);
        to.Append("</").Append(name).Append('>');
    }

    private static void Fence(SetFence f, StringBuilder to)
    {
        to.Append("<mrow>");
        Leaf("mo form=\"prefix\" stretchy=\"true\"", f.Left, to);
        Write(f.Of, to);
        Leaf("mo form=\"postfix\" stretchy=\"true\"", f.Right, to);
        to.Append("</mrow>");
    }

    private static void Element(string name, StringBuilder to, params IReadOnlyList<Setting> parts)
    {
        to.Append('<').Append(name).Append('>');
        foreach (var part in parts) Write(part, to);
        to.Append("</").Append(name).Append('>');
    }

    private static void Leaf(string start, string text, StringBuilder to)
    {
        to.Append('<').Append(start).Append('>');
        foreach (char c in text) to.Append(c switch { '<' => "&lt;", '>' => "&gt;", '&' => "&amp;", _ => c.ToString() });
        to.Append("</").Append(start.AsSpan(0, start.IndexOf(' ') is var space and > 0 ? space : start.Length)).Append('>');
    }
}
