using System.Globalization;
using Microsoft.Playwright;
using Pattress.Actions.Fixtures;
using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Browser.Tests;

/// <summary>Enters a job into an empty page as a person would: every wall with its parts and readings, then every thing.</summary>
internal sealed class Entering(Visit visit, Hand hand)
{
    private IPage Page => visit.Page;

    public async Task Whole(Job job)
    {
        Page.SetDefaultTimeout(30_000);
        await hand.Press(Button("New job"));
        await hand.Press(Page.Locator("a.job-title"));
        await hand.Type(Field("Name of the job"), job.Title);
        await hand.Choose(List("House"), Texts.Name("house." + job.Settings.House));
        await hand.Type(Field("Built in"), Number(job.Settings.YearBuilt!.Value));
        foreach (var wall in job.Walls) await Wall(wall);
        foreach (var thing in job.Fixtures) await Thing(thing, job.Walls.Single(w => w.Id == thing.Wall));
    }

    private async Task Wall(Wall wall)
    {
        await hand.Press(Page.Locator("nav.strip a").First);
        await hand.Press(Link("New wall"));
        await hand.Type(Field("Name"), wall.Name);
        if (wall.Kind == "ceiling") await hand.Choose(List("Wall or ceiling"), "ceiling");
        await hand.Type(Field("Wide"), Number(wall.WidthMm));
        await hand.Type(Field("High"), Number(wall.HeightMm));
        await hand.Press(Button("Add the wall"));
        await hand.Press(Link("Change the wall"));
        if (wall.ThicknessMm is { } thick) await hand.Type(Field("Thick, if measured"), Number(thick));
        if (wall.OtherSide != "unknown") await hand.Choose(List("On the other side"), Texts.Name("other_side." + wall.OtherSide));
        if (wall.Condition.Moisture != "unknown") await hand.Choose(List("Damp"), Texts.Name("moisture." + wall.Condition.Moisture));
        foreach (var o in wall.Openings) await Part("Windows, doors, recesses", "opening." + o.Kind, o.Area);
        foreach (var s in wall.Services)
        {
            await Part("Sockets, switches, pipes", "service." + s.Kind, s.Area);
            _ids[s.Id] = IdOf("service." + s.Kind);
        }

        foreach (var z in wall.Zones) await Part("Parts built otherwise", "zone." + z.Kind, z.Area);
        await hand.Press(Link("Done"));
        foreach (var reading in wall.Readings) await Reading(reading);
        foreach (var check in wall.StripChecks) await StripCheck(check);
    }

    private async Task StripCheck(StripCheck check)
    {
        int dash = check.Strip.LastIndexOf('_');
        string strip = dash > 0 && _ids.TryGetValue(check.Strip[..dash], out string? id) ? id + check.Strip[dash..] : check.Strip;
        await hand.Choose(Page.GetByLabel($"How strip {strip.Replace('_', ' ')} was checked"), Texts.Name("how." + check.How));
    }

    /// <summary>The page names a part by its kind, and the next ones with a number.</summary>
    private string IdOf(string kind)
    {
        string name = kind[(kind.IndexOf('.', StringComparison.Ordinal) + 1)..];
        int others = _ids.Values.Count(v => v == name || v.StartsWith(name + "_", StringComparison.Ordinal));
        return others == 0 ? name : name + "_" + (others + 1).ToString(CultureInfo.InvariantCulture);
    }

    private readonly Dictionary<string, string> _ids = new(StringComparer.Ordinal);

    private async Task Part(string section, string kind, Rect area)
    {
        var parts = Page.Locator("fieldset", new() { Has = Page.Locator($"legend:text-is('{section}')") });
        await hand.Press(parts.GetByRole(AriaRole.Button, new() { Name = "Add " + Texts.Name(kind), Exact = true }));
        var part = parts.Locator(".part").Last;
        await hand.Type(Field("Wide", part), Number(area.Width));
        await hand.Type(Field("High", part), Number(area.Height));
        await hand.Type(Field("Left edge", part), Number(area.X));
        await hand.Type(Field("Lower edge", part), Number(area.Y));
    }

    private async Task Reading(Reading r)
    {
        await hand.Press(Button("Add a reading"));
        var sheet = Page.Locator("dialog[open]");
        if ((r.At ?? r.From) is { } at)
        {
            await hand.Type(Field("From the left", sheet), Number(at.X));
            await hand.Type(Field("Up", sheet), Number(at.Y));
        }

        await hand.Press(Key(sheet, "reading." + r.Kind));
        if (r.Kind == "magnet")
        {
            await Sweep(sheet, r);
            return;
        }

        foreach (var (label, value) in ((string, double?)[])[("Bit, if you know it", r.DiameterMm), ("Solid at, behind the face", r.SolidAtMm), ("Ran in", r.DepthMm), ("Board with its skim", r.ThicknessMm), ("Clear depth behind the board", r.VoidMm)])
            if (value is { } v) await hand.Type(Field(label, sheet), Number(v));
        if (r.Swarf is { } swarf) await hand.Choose(List("What came out", sheet), Texts.Name("swarf." + swarf));
        var (field, word) = ((string, string?)[])[("sound", r.Sound), ("met", r.Met), ("signal", r.Signal), ("shows", r.Shows), ("found", r.Found), ("says", r.Says)] is var words
            ? words.FirstOrDefault(w => w.Item2 is not null) : default;
        await hand.Press(word is null ? sheet.GetByRole(AriaRole.Button, new() { Name = "Put it in" }) : Key(sheet, field + "." + word));
        await Assertions.Expect(sheet).ToHaveCountAsync(0);
    }

    private async Task Sweep(ILocator sheet, Reading r)
    {
        bool upright = r.From!.Value.X == r.To!.Value.X;
        await hand.Press(sheet.Locator("summary"));
        if (upright) await hand.Press(sheet.GetByLabel("Swept up and down"));
        await hand.Type(Field("Swept from", sheet), Number(upright ? r.From.Value.Y : r.From.Value.X));
        await hand.Type(Field("Swept to", sheet), Number(upright ? r.To.Value.Y : r.To.Value.X));
        await hand.Type(Field("It drew at", sheet), string.Join(' ', r.Hits.Select(h => Number(upright ? h.Y : h.X))));
        await hand.Press(sheet.GetByRole(AriaRole.Button, new() { Name = "Put it in" }));
        await Assertions.Expect(sheet).ToHaveCountAsync(0);
    }

    private async Task Thing(Fixture thing, Wall wall)
    {
        await hand.Press(Page.Locator("nav.strip a").First);
        await hand.Press(Page.GetByRole(AriaRole.Link, new() { Name = wall.Name, Exact = true }));
        await hand.Press(Link("Hang something"));
        await hand.Press(Page.Locator(".keypad").GetByRole(AriaRole.Button, new() { Name = Texts.Name("fixture." + thing.What), Exact = true }));
        await hand.Type(Field("Name"), thing.Name);
        var where = Page.Locator("form fieldset").First;
        await hand.Type(Field("From the left", where), Number(thing.At.X));
        await hand.Type(Field("Up", where), Number(thing.At.Y));
        foreach (var field in FixtureCatalogue.Find(thing.What)!.Fields) await Measure(thing, field);
        if (thing.Brackets.Count > 0) await Brackets(thing.Brackets);
        if (thing.Removable) await hand.Press(Page.GetByLabel("It must come out again"));
        if (thing.OverBed) await hand.Press(Page.GetByLabel("It hangs over a bed"));
        if (thing.ToeStrip) await hand.Press(Page.GetByLabel("A strip under the bracket's toe"));
    }

    private async Task Measure(Fixture thing, FixtureField field)
    {
        string label = Texts.Name("field." + field.Name);
        var measures = Page.Locator("form");
        bool given = thing.Numbers.ContainsKey(field.Name) || thing.Words.ContainsKey(field.Name);
        if (given && !await measures.Locator($"label.field:has(> span:text-is(\"{label}\"))").First.IsVisibleAsync())
            await hand.Press(measures.Locator("summary", new() { HasTextString = "The bracket, if you measured it" }));
        if (thing.Numbers.TryGetValue(field.Name, out double number)) await hand.Type(Field(label, measures), Number(number));
        if (thing.Words.TryGetValue(field.Name, out string? word)) await hand.Choose(List(label, measures), Texts.Name("word." + word));
    }

    private async Task Brackets(IReadOnlyList<Point> places)
    {
        await hand.Press(Button("Place them by hand"));
        var rows = Page.Locator("fieldset", new() { Has = Page.Locator("legend:text-is('Brackets')") }).Locator(".part");
        while (await rows.CountAsync() < places.Count) await hand.Press(Button("One bracket more"));
        while (await rows.CountAsync() > places.Count) await hand.Press(rows.Last.GetByRole(AriaRole.Button));
        for (int i = 0; i < places.Count; i++)
        {
            await hand.Type(Field("From the left", rows.Nth(i)), Number(places[i].X));
            await hand.Type(Field("Up", rows.Nth(i)), Number(places[i].Y));
        }
    }

    private ILocator Button(string name) => Page.Locator("main").GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    private ILocator Link(string name) => Page.Locator("main").GetByRole(AriaRole.Link, new() { Name = name, Exact = true }).First;

    private ILocator Field(string label, ILocator? within = null) => (within ?? Page.Locator("main")).Locator($"label.field:has(> span:text-is(\"{label}\")) input").First;

    private ILocator List(string label, ILocator? within = null) => (within ?? Page.Locator("main")).Locator($"label.field:has(> span:text-is(\"{label}\")) select").First;

    private static ILocator Key(ILocator sheet, string code) => sheet.GetByRole(AriaRole.Button, new() { Name = Texts.Name(code), Exact = true });

    private static string Number(double value) => value.ToString(CultureInfo.InvariantCulture);
}
