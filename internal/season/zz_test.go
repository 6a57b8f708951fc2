package season
import ("testing";"os";"encoding/gob";"context";"strconv";"time";"syscall";"math")
func zzProblem(t testing.TB) *Problem {
 switch n:=os.Getenv("G"); n {
 case "small": return small900()
 case "medium": return medium9500()
 case "other": return mediumOther()
 case "large": return large60000()
 default:
  f,err:=os.Open("/tmp/h/season3-"+n+".gob"); if err!=nil{t.Fatal(err)}
  p:=&Problem{}; if err:=gob.NewDecoder(f).Decode(p);err!=nil{t.Fatal(err)}
  f.Close(); return p
 }
}
func zzCPU() float64 { var r syscall.Rusage; syscall.Getrusage(0,&r); return float64(r.Utime.Sec)+float64(r.Utime.Usec)/1e6+float64(r.Stime.Sec) }
func zzInt(k string,d int) int { if v:=os.Getenv(k);v!=""{n,_:=strconv.Atoi(v);return n}; return d}
func TestZZ(t *testing.T){
 p:=zzProblem(t)
 if os.Getenv("MEAN")!="" { q:=*p; p=&q; zzMean(p) }
 if os.Getenv("NOROT")!="" { for i:=range p.Options{p.Options[i].RotationCost=0} }
 if os.Getenv("NOCLEAR")!="" { p.RestCost=0 }
 if os.Getenv("NOMIN")!="" { p.OverCost=0 }
 nothing:=Plan{Pull:naturalEnds(p)}
 none:=Expect(p,&nothing)
 t0:=time.Now(); c0:=zzCPU()
 var c *Certificate
 if b:=zzInt("B",3000000); b>0 {
 c=Bound(context.Background(),p,BoundLimits{Work:b,Workers:2})
 t.Logf("%s options %d none %.2f bound %.2f work %d  cpu %.1f wall %.1f",os.Getenv("G"),len(p.Options),none,c.Bound,c.Work,zzCPU()-c0,time.Since(t0).Seconds())
 }
 for s:=0;s<zzInt("SEEDS",1);s++{
 if w:=zzInt("S",7000000);w>0{
 t0=time.Now(); c0=zzCPU()
 lim:=Limits{Work:w,Workers:2,Seed:uint64(s+1)}
 if os.Getenv("NOGUIDE")=="" {lim.Prices=c}
 plan:=Search(context.Background(),p,lim)
 v:=Expect(p,&plan)
 g:=math.NaN(); if c!=nil {g,_=Gap(c.Bound,v,none)}
 t.Logf("  seed %d plan %.2f value %.2f gap %.2f%% cpu %.1f wall %.1f work %d",s+1,v,plan.Value,100*g,zzCPU()-c0,time.Since(t0).Seconds(),plan.Work)
 }}
}
// zzMean makes all futures one: the mean harvest.
func zzMean(p *Problem){
 o:=make([]Option,len(p.Options)); copy(o,p.Options)
 mean:=func(m [][]float32)[][]float32{
  n:=0; for _,r:=range m{n=max(n,len(r))}
  s:=make([]float64,n); for _,r:=range m[:min(len(m),p.Futures)]{for k,x:=range r{s[k]+=float64(x)}}
  out:=make([]float32,n); for k:=range s{out[k]=float32(s[k]/float64(p.Futures))}
  return [][]float32{out}
 }
 for i:=range o{o[i].Meals=mean(o[i].Meals)}
 st:=make([]Stay,len(p.Stays)); copy(st,p.Stays)
 for i:=range st{ if st[i].Meals!=nil{st[i].Meals=mean(st[i].Meals)}}
 p.Options,p.Stays,p.Futures=o,st,1
}
