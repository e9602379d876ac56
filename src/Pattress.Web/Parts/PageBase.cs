using Microsoft.AspNetCore.Components;
using Pattress.Jobs;
using Pattress.Papers.Drawings;
using Pattress.Papers.Elevations;
using Pattress.Web.Browser;
using Pattress.Web.Desks;

namespace Pattress.Web.Parts;

/// <summary>A page or a part of one: it reads the desk and draws again when the desk changes.</summary>
public abstract class PageBase : ComponentBase, IDisposable
{
    [Inject] public required Desk Desk { get; init; }

    [Inject] public required Words Words { get; init; }

    [Inject] public required Viewport Viewport { get; init; }

    protected Job Job => Desk.Job;

    protected PlanAnswer Plan => Desk.Plan;

    protected Say Saying => Words.Say;

    protected string T(string code, params IReadOnlyList<Said> values) => Words.Say(new Reason("ui." + code, values));

    protected string Say(Reason reason) => Words.Say(reason);

    protected string Name(string id) => Words.Say(new Reason("draw_name", Said.Name(id)));

    protected string Length(double mm) => Words.Say(new Reason("draw_length", Said.Length(mm)));

    protected string Percent(double fraction) => Words.Say(new Reason("draw_percent", Said.Percent(fraction)));

    protected string NameOf(Fixture fixture) => fixture.Name.Length > 0 ? fixture.Name : Name("fixture." + fixture.What);

    protected string NameOf(Wall wall) => wall.Name.Length > 0 ? wall.Name : wall.Id;

    protected IReadOnlyList<Hung> ThingsOn(string wall) =>
        [.. Job.Fixtures.Select((f, i) => (f, i)).Where(p => p.f.Wall == wall).Select(p => new Hung(Letters.Of(p.i), p.f, Plan.Items.FirstOrDefault(a => a.Id == p.f.Id)))];

    protected override void OnInitialized()
    {
        Desk.Changed += Refresh;
        Viewport.Changed += Refresh;
    }

    public virtual void Dispose()
    {
        Desk.Changed -= Refresh;
        Viewport.Changed -= Refresh;
        GC.SuppressFinalize(this);
    }

    private void Refresh() => InvokeAsync(StateHasChanged);
}
